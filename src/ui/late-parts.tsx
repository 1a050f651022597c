import type { ComponentType } from 'preact';
import { createLate, type Late } from '../state/late';
import type { AppModels, LateParts } from './app-models';

type Place = ComponentType<{ app: AppModels }>;

/** Every part of the screen that comes later than the first answer. */
export function createLateParts(models: Late<AppModels>, page: EventTarget): LateParts {
  const part = <T,>(load: () => Promise<T>) => createLate(load, page);
  const place = (load: () => Promise<Place>) =>
    part(async () => {
      const [Place, app] = await Promise.all([load(), models.fetch()]);
      if (app === null) throw new Error('The models of the places are not here.');
      return () => <Place app={app} />;
    });
  return {
    models,
    news: part(async () => (await import('./NewsLines')).NewsLines),
    hand: part(async () => (await import('./shot/picture-hand')).pictureHand),
    control: part(async () => (await import('./shot/InputControl')).InputControl),
    why: part(async () => {
      const [{ WhyPanel }, app] = await Promise.all([import('./shot/WhyPanel'), models.fetch()]);
      return (props) => <WhyPanel {...props} late={app} />;
    }),
    question: part(async () => (await import('./player/QuestionPanel')).QuestionPanel),
    after: place(async () => (await import('./log/AfterAim')).AfterAim),
    choose: place(async () => (await import('./places')).PLACES.choose),
    kit: place(async () => (await import('./places')).PLACES.kit),
    log: place(async () => (await import('./places')).PLACES.log),
  };
}

/** In the order in which they are most likely asked for. */
export function inOrder(parts: LateParts): readonly Late<unknown>[] {
  const { hand, news, control, models, why, question, after, choose, kit, log } = parts;
  return [hand, news, control, models, why, question, after, choose, kit, log];
}
