import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, expect, it } from 'vitest';
import { NavBar } from '../../../src/ui/NavBar';
import { createRouter } from '../../../src/ui/route';

afterEach(cleanup);

const address = (name: string) => screen.getByRole('link', { name }).getAttribute('href');

it('leads back into Choose to where one left it, and from within to its balls', async () => {
  history.replaceState(null, '', '#choose');
  const router = createRouter(window);
  render(<NavBar router={router} />);
  router.open('ways');
  await expect.poll(() => screen.getByRole('link', { current: 'page' }).textContent).toBe('Choose');
  expect(address('Choose')).toBe('#choose');
  router.goTo('shot');
  await expect.poll(() => address('Choose')).toBe('#choose/ways');
  expect(address('Shot')).toBe('#shot');
  router.goTo('choose');
  await expect.poll(() => address('Choose')).toBe('#choose');
  router.goTo('kit');
  await expect.poll(() => screen.getByRole('link', { current: 'page' }).textContent).toBe('Kit');
  expect(address('Choose')).toBe('#choose');
});
