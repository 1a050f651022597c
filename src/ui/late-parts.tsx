import type { ComponentType } from 'preact';
import { createLate, type Late } from '../state/late';
import type { AppModels, LateParts } from './app-models';

type Parts = typeof import('./parts').PARTS;
type Place = ComponentType<{ app: AppModels }>;

/** Every part of the screen that comes later than the first answer. */
export function createLateParts(models: Late<AppModels>, page: EventTarget): LateParts {
  const load = async <K extends keyof Parts>(name: K) => (await import('./parts')).PARTS[name];
  const part = <K extends keyof Parts>(name: K) => createLate(() => load(name), page);
  const place = (name: 'after' | 'choose' | 'kit' | 'log') =>
    createLate(async () => {
      const [Place, app]: [Place, AppModels | null] = await Promise.all([
        load(name),
        models.fetch(),
      ]);
      if (app === null) throw new Error('The models of the places are not here.');
      return () => <Place app={app} />;
    }, page);
  return {
    models,
    news: part('news'),
    hand: part('hand'),
    control: part('control'),
    why: createLate(async () => {
      const [WhyPanel, app] = await Promise.all([load('why'), models.fetch()]);
      return (props) => <WhyPanel {...props} late={app} />;
    }, page),
    question: part('question'),
    after: place('after'),
    choose: place('choose'),
    kit: place('kit'),
    log: place('log'),
  };
}

/** In the order in which they are most likely asked for. */
export function inOrder(parts: LateParts): readonly Late<unknown>[] {
  const { hand, news, control, models, why, question, after, choose, kit, log } = parts;
  return [hand, news, control, models, why, question, after, choose, kit, log];
}
