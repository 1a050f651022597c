/** One of everything that a page is watched for. Runs in the page. */
export function provokeProblems(): void {
  console.error('invented');
  setTimeout(() => {
    throw new Error('thrown for a test');
  });
  document.body.append(Object.assign(new Image(), { src: 'http://elsewhere.invalid/a.png' }));
}
