export interface RecordActionSpec {
  readonly label: string;
  /** The same as it is read aloud before the name. */
  readonly spoken?: string;
  /** The panel it opens, for the focus to come back to. */
  readonly opens?: string;
  /** Whether what it shows is shown, where it shows something. */
  readonly isExpanded?: boolean;
  onTap(): void;
}

/** Something that can be done to one of a list; read aloud with its name. */
export function RecordAction({
  name,
  label,
  spoken = label,
  opens,
  isExpanded,
  onTap,
}: RecordActionSpec & { readonly name: string }) {
  return (
    <button
      type="button"
      class="button"
      aria-label={`${spoken} ${name}`}
      aria-expanded={isExpanded}
      data-opens={opens}
      onClick={() => onTap()}
    >
      {label}
    </button>
  );
}
