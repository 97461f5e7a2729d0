import { createRoot } from 'react-dom/client';
import demo from '../../../demo-data/terrace.project.json?raw';
import { parseProject } from '../../../src/io/project-file';
import type { Look, RoomLight } from '../../../src/kitchen/look';
import type { Room } from '../../../src/kitchen/types';
import type { Project } from '../../../src/model/project';
import { Picture } from '../../../src/view/Picture';
import { readPixels } from '../../../src/view/read-pixels';
import { createStudio } from '../../../src/workers/client';

// The demo kitchen's picture and nothing else, to be driven and timed by picture.bench.ts.

export interface PictureBench {
  /** Shows a setting from a viewpoint (index), at full quality. */
  look(setting: string, viewpoint: number, sheen: boolean): Promise<void>;
  /** Milliseconds of sharp frames drawn and read back, one after another. */
  sharpFrames(count: number): Promise<number[]>;
  /** Milliseconds between frames of a flight to another viewpoint. */
  flight(viewpoint: number): Promise<number[]>;
  /** Lays other finishes on counter and fronts, one after another; waits for each look. */
  swap(count: number): Promise<void>;
}

declare global {
  interface Window {
    pictureBench: PictureBench;
  }
}

const COUNTERS = ['EN-01', 'EN-02', 'EN-03', 'EN-04', 'EN-05', 'ST-04'];
const FRONTS = ['PT-01', 'PT-04', 'PT-06', 'PT-14'];

const parsed = parseProject(demo);
if (!parsed.ok) throw new Error(parsed.problem.text);
let project: Project = parsed.value;
const { id: option, scheme } = project.options[0]!;
let setting = project.settings[0]!.id;
let room: Room | null = null;
let light: RoomLight | null = null;
let look: Look | null = null;
let viewpoint = 0;
let version = 0;
let sheen = true;
let swaps = 0;
let frames: number[] = [];
let waiting: (() => boolean)[] = [];

const place = document.getElementById('root')!;
const root = createRoot(place);

function render(): void {
  waiting = waiting.filter((isDone) => !isDone());
  if (!room || !light || !look) return;
  root.render(
    <Picture
      room={room}
      light={light}
      look={look}
      viewpoint={room.viewpoints[viewpoint]!}
      viewpointVersion={version}
      reducedMotion={false}
      sheen={sheen}
      outlined={[]}
      onFrame={() => {
        frames.push(performance.now());
      }}
      label="The demo kitchen"
    />,
  );
}

const studio = createStudio({
  room(next) {
    room = next;
    render();
  },
  light(next) {
    light = next;
    render();
  },
  look(next, isCurrent) {
    if (!isCurrent) return;
    look = next;
    render();
  },
  stand() {},
  standLight() {},
  assessment() {},
  facts() {},
  problem(problem) {
    throw new Error(problem.text);
  },
});

const show = (): void => studio.show(project, { options: [option], setting, seenBy: 'used-to-it', stand: null });

function until(isDone: () => boolean): Promise<void> {
  return new Promise((resolve) => {
    waiting.push(() => {
      if (!isDone()) return false;
      resolve();
      return true;
    });
    render();
  });
}

const canvas = (): HTMLCanvasElement => place.querySelector('canvas')!;
const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Until half a second passes without a frame. */
async function rested(): Promise<void> {
  for (let before = -1; before !== frames.length; await pause(500)) before = frames.length;
}

window.pictureBench = {
  async look(id, index, withSheen) {
    [setting, viewpoint, sheen] = [id, index, withSheen];
    version++;
    show();
    await until(() => look?.setting === id && light !== null && light.isFinal);
    await rested();
  },
  async sharpFrames(count) {
    const times: number[] = [];
    for (let i = 0; i < count; i++) {
      const start = performance.now();
      await readPixels(canvas());
      times.push(performance.now() - start);
    }
    return times;
  },
  async flight(index) {
    frames = [];
    viewpoint = index;
    version++;
    render();
    await rested();
    return frames.slice(1).map((at, i) => at - frames[i]!);
  },
  async swap(count) {
    for (let i = 0; i < count; i++) {
      swaps++;
      const [counter, fronts] = [COUNTERS[swaps % COUNTERS.length]!, FRONTS[swaps % FRONTS.length]!];
      const laid = {
        ...scheme,
        counter: { ...scheme.counter!, finish: counter },
        'island-counter': { ...scheme['island-counter']!, finish: counter },
        'base-fronts': { ...scheme['base-fronts']!, finish: fronts },
      };
      const options = project.options.map((one) => (one.id === option ? { ...one, scheme: laid } : one));
      project = { ...project, options };
      show();
      const index = room!.surfaces.indexOf('counter');
      await until(() => look!.surfaces[index]!.finish === counter);
      await pause(0);
    }
    await rested();
  },
};
show();
