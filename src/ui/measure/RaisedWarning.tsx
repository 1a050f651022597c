/** Said wherever a cue is to be raised. */
export function RaisedWarning() {
  return (
    <span class="attempt-warning">
      <span aria-hidden="true">⚠</span> A raised cue can tear cloth or send the ball off the table:
      ask the room’s owner first.
    </span>
  );
}
