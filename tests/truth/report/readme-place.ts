/**
 * The README with a text in its place, between the marks of that name.
 *
 * @throws Error without marks
 */
export function withText(readme: string, name: string, text: string): string {
  const [begin, end] = [`<!-- ${name} begins -->`, `<!-- ${name} ends -->`];
  const [from, to] = [readme.indexOf(begin), readme.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`the README has no place for ${name}`);
  return `${readme.slice(0, from)}${begin}\n\n${text}\n\n${readme.slice(to)}`;
}
