/** The question mark of what cannot be told, in a 16 by 16 drawing: the same wherever it stands. */
export function QuestionPath() {
  return (
    <path
      d="M5 5.5a3 3 0 1 1 4.4 2.7C8.4 8.8 8 9.4 8 10.5M8 12.6v1.6"
      stroke="currentColor"
      strokeWidth="1.8"
      fill="none"
    />
  );
}
