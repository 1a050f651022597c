import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Those without a browser first: meanwhile the browsers of the last are being fetched. */
const PROJECTS = ['unit', 'dom', 'build', 'e2e', 'engines'];

/**
 * One project after another, without a wait in between: a worker that has nothing left to do in one
 * begins on the next. Within a project the largest files come first.
 */
export class InTurn extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const turn = ({ project }: TestSpecification) => PROJECTS.indexOf(project.name);
    return (await super.sort(files)).sort((one, other) => turn(one) - turn(other));
  }
}
