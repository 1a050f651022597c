/** What is said of one thing: its name, and words that a full stop ends. */
export type ToldLine = readonly [what: string, words: string];

/** Lines that each begin with what they tell of. */
export function ToldLines({ lines }: { lines: readonly ToldLine[] }) {
  return (
    <>
      {lines.map(([what, words]) => (
        <p key={what}>
          <b>{what}</b> {words}.
        </p>
      ))}
    </>
  );
}
