import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, describe, expect, it } from 'vitest';
import { openChoose, press } from './open-choose';

afterEach(cleanup);

/** What can be done to one of a list lies behind its button. */
async function doTo(action: string, name: string) {
  press(`More: ${name}`);
  fireEvent.click(await screen.findByRole('button', { name: `${action} ${name}` }));
}

describe('positions', () => {
  it('are said to be invented where they are', () => {
    const { container } = openChoose('#choose/positions');
    expect(container.textContent).toContain('an invented example, 5 balls');
  });

  it('are begun, copied and opened', async () => {
    const { choose } = openChoose('#choose/positions');
    await doTo('Copy', 'Empty table');
    await expect
      .poll(() => choose.saved.value.map(({ name }) => name))
      .toContain('Empty table (copy)');
    press('New position');
    expect(choose.open.value.name).toBe('Position 1');
  });

  it('are deleted, and that is taken back', async () => {
    const { choose } = openChoose('#choose/positions');
    await doTo('Delete', 'Empty table');
    expect(choose.saved.value).toHaveLength(1);
    await expect.poll(() => screen.queryByText('Empty table is deleted.')).toBeTruthy();
    press(/Put it back/);
    expect(choose.saved.value).toHaveLength(2);
  });

  it('are given another name', async () => {
    const { choose } = openChoose('#choose/positions');
    await doTo('Rename', 'Cut into the corner');
    const field = await screen.findByRole('textbox', { name: 'Name' });
    fireEvent.input(field, { target: { value: 'Cut, once\nmore' } });
    fireEvent.blur(field);
    expect(choose.open.value.name).toBe('Cut, once more');
    await expect.poll(() => screen.queryByRole('textbox')).toBeNull();
  });

  it('keep their name where a new one cannot be used, and say why', async () => {
    const { choose, container } = openChoose('#choose/positions');
    await doTo('Rename', 'Cut into the corner');
    const field = await screen.findByRole('textbox', { name: 'Name' });
    fireEvent.input(field, { target: { value: ' ' } });
    fireEvent.blur(field);
    expect(choose.open.value.name).toBe('Cut into the corner');
    await expect
      .poll(() => container.querySelector('.field-problem')?.textContent)
      .toBe('Give it a name.');
  });
});
