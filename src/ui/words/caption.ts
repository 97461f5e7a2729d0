import { spoken } from './spoken';

/** Words under a picture that is kept. */
export const CAPTION = spoken({
  title: (project: string, options: readonly string[]) =>
    options.length > 1 ? `${project}: left ${options[0]}, right ${options[1]}` : `${project}: ${options[0]}`,
  light: (setting: string, caption: string) => `Light: ${setting}. ${caption}.`,
  view: (viewpoint: string, height: string, isMoved: boolean) =>
    isMoved
      ? `${viewpoint}, moved from there; eye ${height} above the floor.`
      : `${viewpoint}, eye ${height} above the floor.`,
  stand: 'The finishes as samples on a stand, lit as the counter is.',
  usual: 'Shown in color, as seen by eyes used to the light.',
  kept: (date: string) => `Kept on ${date}.`,
  cautions: 'A screen is not a sample: check physical samples in the room. Planning aid only.',
} as const);
