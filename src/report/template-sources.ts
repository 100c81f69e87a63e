import type { Project } from '../project/index.ts';
import type { World } from '../world/index.ts';
import { templateNames } from './template-names.ts';

/** The program's templates, the project's own in place of those of the same name. */
export function templateSources(
  world: World,
  project: Project,
): Readonly<Record<string, string>> {
  const decoder = new TextDecoder();
  const own = templateNames.map((name) => [
    name,
    decoder.decode(world.ownFile(`report-templates/${name}.hbs`)),
  ]);
  const replaced = Object.entries(project.templates).map(([file, text]) => [
    file.replace(/\.hbs$/, ''),
    text,
  ]);
  return Object.fromEntries([...own, ...replaced]) as Readonly<Record<string, string>>;
}
