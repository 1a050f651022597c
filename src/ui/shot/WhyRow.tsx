import type { ComponentChildren } from 'preact';

/** One thing told, and what it is. */
export function WhyRow({ term, children }: { term: string; children: ComponentChildren }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}
