import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { projectText } from '../../src/io/project-file';
import { projectSchema } from '../../src/io/project-schema';
import { terrace } from '../ui/terrace';

/** Change it together with the version of projects, never alone. */
const FIELDS = { version: 9, hash: '9d26725782aa' };

// An older program drops fields that it does not know, and refuses a newer version: a field that comes or goes needs a new version.
it('the fields of a project are those of its version', () => {
  const version = JSON.parse(projectText(terrace())).version;
  const fields = [...new Set(fieldsOf(projectSchema))].sort();
  expect(fields.length).toBeGreaterThan(200);
  const hash = createHash('sha256').update(fields.join('\n')).digest('hex').slice(0, 12);
  expect({ version, hash }).toEqual(FIELDS);
});

interface Schema {
  readonly type?: string;
  readonly entries?: Readonly<Record<string, Schema>>;
  readonly options?: readonly (Schema | string | number)[];
  readonly item?: Schema;
  readonly items?: readonly Schema[];
  readonly wrapped?: Schema;
  readonly pipe?: readonly Schema[];
}

/** The path of every field of a schema. */
function fieldsOf(schema: Schema, path = ''): readonly string[] {
  const below = [schema.item, ...(schema.items ?? []), schema.wrapped, ...(schema.options ?? [])];
  return [
    ...Object.entries(schema.entries ?? {}).flatMap(([name, one]) => [
      `${path}.${name}`,
      ...fieldsOf(one, `${path}.${name}`),
    ]),
    ...below.flatMap((one) => (typeof one === 'object' ? fieldsOf(one, path) : [])),
  ];
}
