import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { openProject } from '../../src/app/files';
import { initialState, projectOf } from '../../src/app/state';
import { Banner } from '../../src/ui/parts/Banner';
import { demoText } from '../io/demo';
import { terrace } from '../ui/terrace';
import { unkept } from '../ui/unkept';

// Of several problems in a file only the first was shown, harmless notices looked like problems, and the path stood twice.

async function opened(text: string) {
  const store = createStore(() => initialState(terrace(), 'system'));
  await openProject(store, unkept(store), new File([text], 'mine.json'));
  const { told } = store.getState();
  const markup = told
    ? renderToStaticMarkup(createElement(Banner, { told, onDismiss: () => {}, onSave: () => {} }))
    : '';
  return { markup, project: projectOf(store.getState()) };
}

it('shows the first of several problems and lists the others, each path once', async () => {
  const text = demoText()
    .replace('"finish": "WD-01"', '"finish": "XX-99"')
    .replace('"grout": "GR-02"', '"grout": "XX-98"')
    .replace('"level": 0,', '"level": 7,');
  const { markup } = await opened(text);
  expect(markup).toContain('role="alert"');
  expect(markup).toContain('Nothing was changed.');
  expect(markup).toMatch(/<summary>What the program found \(\d+\)<\/summary>/);
  expect(markup).toContain('XX-99');
  expect(markup).toContain('.level is 7');
  expect(markup.match(/\.floor\.finish/g)).toHaveLength(1);
  expect(markup).not.toContain('Save my work');
});

it('says a harmless notice as such, and offers to save nothing', async () => {
  const { markup, project } = await opened(demoText().replace('"version": 9,', '"version": 9, "mood": "bright",'));
  expect(markup).toContain('role="status"');
  expect(markup).toContain('mood is no field');
  expect(markup).not.toContain('Save my work');
  expect(project).toEqual(terrace());
});

it('says the line of a broken file once', async () => {
  const { markup } = await opened('{\n  "type": oops\n}');
  expect(markup.match(/line 2/gi)).toHaveLength(1);
  expect(markup).toContain('mine.json, line 2');
});

it('says nothing of a sound file', async () => {
  expect((await opened(demoText())).markup).toBe('');
});
