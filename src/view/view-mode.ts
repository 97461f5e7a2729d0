/** What the picture shows of each color: all of it, the gray of its luminance, or its lightness L* in ten steps. */
export type ViewMode = 'color' | 'gray' | 'lightness';

/** As the shaders count them (view-mode.glsl). */
export const VIEW_MODE_NUMBERS: Readonly<Record<ViewMode, number>> = { color: 0, gray: 1, lightness: 2 };
