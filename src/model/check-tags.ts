import type { Problem } from '../engine/result';
import { checkText } from './check-number';
import type { FinishOrigin } from './project';

const MOST_TAGS = 20;
const LONGEST_TAG = 40;

/** What is wrong with the words to find a finish by: empty, long, many, or there twice. */
export function checkTags(tags: readonly string[], path: string): readonly Problem[] {
  const problems: Problem[] = [];
  if (tags.length > MOST_TAGS) {
    problems.push({
      code: 'too-many-tags',
      text: `${path} has ${tags.length} tags; at most ${MOST_TAGS} are kept.`,
      at: { path },
      remedy: 'Leave some out.',
    });
  }
  tags.forEach((tag, i) => {
    const at = `${path}[${i}]`;
    problems.push(...checkText(tag, at));
    if (tag.length > LONGEST_TAG) {
      problems.push({
        code: 'tag-too-long',
        text: `${at} has ${tag.length} characters; a tag has at most ${LONGEST_TAG}.`,
        at: { path: at },
        remedy: 'Shorten it, or write it into the note.',
      });
    }
    if (tags.indexOf(tag) < i) {
      problems.push({
        code: 'duplicate-tag',
        text: `${at}: "${tag}" stands there already.`,
        at: { path: at },
        remedy: 'Leave it out.',
      });
    }
  });
  return problems;
}

/** What is wrong with where a finish was taken from. */
export const checkOrigin = ({ library, name, finish }: FinishOrigin, path: string): readonly Problem[] => [
  ...checkText(library, `${path}.library`),
  ...checkText(name, `${path}.name`),
  ...checkText(finish, `${path}.finish`),
];
