import type { Answers } from '../../model/new-project';

/** What a question works with: the answers so far, and what it changes of them. */
export interface QuestionProps {
  readonly answers: Answers;
  readonly onAnswers: (answers: Answers) => void;
}
