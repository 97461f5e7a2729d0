import { expect, it } from 'vitest';
import { run } from '../../src/cli/run';

it('speaks UK words to people and leaves JSON, commands, ids and what was typed as they are', () => {
  const color = ['color', 'lrv:70 warm gray'];
  expect(run([...color, '--words', 'uk']).out).toContain('grey');
  expect(run([...color, '--words', 'us']).out).toBe(run(color).out);
  expect(run([...color, '--json', '--words', 'uk', '--units=us']).out).toBe(run([...color, '--json']).out);
  const help = run(['help', '--words=uk']).out;
  expect(help).toContain('upstand color VALUE');
  expect(help).toContain('Colour temperature');
  const project = ['shortlist', 'demo-data/terrace.project.json', '--words', 'uk'];
  expect(run([...project, '--surface', 'gray counter']).messages).toContain(
    'There is no surface "gray counter". Name one of: counter,',
  );
});

it('refuses words and units it does not have', () => {
  expect(run(['help', '--words', 'scots'])).toMatchObject({ exit: 2, messages: expect.stringContaining('us or uk') });
  expect(run(['help', '--units'])).toMatchObject({ exit: 2, messages: expect.stringContaining('metric or us') });
});
