import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { PAGE_ROWS, Paged } from '../../../src/ui/controls/Paged';

afterEach(cleanup);

const MANY = 5000;
const numbers = (count: number) => Array.from({ length: count }, (_, at) => at + 1);

function setUp(count: number, startAt = 0) {
  let rendered = 0;
  const Row = ({ number }: { number: number }) => {
    rendered += 1;
    return <li>Row {number}</li>;
  };
  const list = (items: readonly number[]) => (
    <Paged label="Rows" items={items} startAt={startAt}>
      {(shown) => (
        <ul>
          {shown.map((number) => (
            <Row key={number} number={number} />
          ))}
        </ul>
      )}
    </Paged>
  );
  const { rerender } = render(list(numbers(count)));
  return { rendered: () => rendered, show: (items: readonly number[]) => rerender(list(items)) };
}

const rows = () => screen.getAllByRole('listitem').map(({ textContent }) => textContent);
const place = () => screen.getByRole<HTMLSelectElement>('combobox', { name: 'Rows, shown' });
const button = (name: RegExp) => screen.getByRole<HTMLButtonElement>('button', { name });

describe('a long list', () => {
  it('is as it is while it is short', () => {
    setUp(PAGE_ROWS);
    expect(rows()).toHaveLength(PAGE_ROWS);
    expect(screen.queryByRole('navigation')).toBeNull();
    expect(screen.queryByRole('combobox')).toBeNull();
  });

  it('renders the rows of one page, however many there are', () => {
    const { rendered } = setUp(MANY);
    expect(rendered()).toBe(PAGE_ROWS);
    expect(rows()).toEqual(numbers(PAGE_ROWS).map((number) => `Row ${number}`));
    expect(screen.getByText(/of 5000/)).toBeTruthy();
  });

  it('turns its pages by buttons, and goes to its top with the focus', () => {
    const { rendered } = setUp(120);
    expect(button(/Previous/).disabled).toBe(true);
    fireEvent.click(button(/Next 50/));
    expect(rows().at(0)).toBe('Row 51');
    expect(document.activeElement).toBe(place());
    fireEvent.click(button(/Next 20/));
    expect(rows()).toHaveLength(20);
    expect(button(/Next/).disabled).toBe(true);
    fireEvent.click(button(/Previous 50/));
    expect(rows().at(-1)).toBe('Row 100');
    expect(rendered()).toBe(170);
  });

  it('goes to any page at once', () => {
    setUp(MANY);
    fireEvent.change(place(), { target: { value: '99' } });
    expect(rows().at(-1)).toBe('Row 5000');
  });

  it('begins with the page of what was there before', () => {
    setUp(MANY, 1234);
    expect(rows().at(0)).toBe('Row 1201');
  });

  it('shows its last page where that one is gone', () => {
    const { show } = setUp(101, 100);
    expect(rows()).toEqual(['Row 101']);
    show(numbers(100));
    expect(rows().at(-1)).toBe('Row 100');
  });
});
