import { printable } from './printable';
import { run } from './run';

// A reader that has seen enough (`| head`) closes the pipe; that is no mistake.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

try {
  const { exit, out, messages } = run(process.argv.slice(2));
  process.stderr.write(messages);
  process.stdout.write(out);
  process.exitCode = exit;
} catch (error) {
  const stack = error instanceof Error ? error.stack : String(error);
  process.stderr.write(
    `This is a mistake in the program, not in your input. Please report it with these lines:\n${printable(stack ?? '')}\n`,
  );
  process.exitCode = 1;
}
