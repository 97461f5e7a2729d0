import * as faults from '../../engine/judge/repairs/repair-words';
import { wishWords as ofWish } from '../../engine/judge/shortlist/wishes';
import * as surfaces from '../../engine/judge/surface-words';
import { tintWord as ofTint } from '../../engine/judge/tint-words';
import * as viewpoints from '../../engine/judge/viewpoint-words';
import { lightName as ofLight } from '../../engine/lamp/light-words';
import { spoken } from './spoken';

/* Names and phrases that the engine makes, as the page speaks: what the engine says itself stays in US words. */

export const surfaceName = spoken(surfaces.surfaceName);
export const surfacesPhrase = spoken(surfaces.surfacesPhrase);
export const componentPhrase = spoken(surfaces.componentPhrase);
export const fromViewpoint = spoken(viewpoints.fromViewpoint);
export const faultsPhrase = spoken(faults.faultsPhrase);
export const tintWord = spoken(ofTint);
export const lightName = spoken(ofLight);
export const wishWords = spoken(ofWish);
