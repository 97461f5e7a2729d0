import { BAND_COUNT } from '../../engine/light/bands';
import { type DirectMap, directAt } from '../../engine/light/direct-map';
import { CHANNELS, DIRECT_LAYERS } from '../../engine/light/direct-scene';
import { rectNormal } from '../../engine/light/rect-bvh';
import { samplePoint } from '../../engine/light/sample-point';
import type { Rect, Vec3 } from '../../engine/light/types';
import type { ByLayer } from '../look';
import { brightFaces } from './bright-faces';
import type { LitScheme } from './lit-scheme';
import type { MirroredRoom } from './mirrored-room';
import type { RoomBasis } from './room-study';
import { sampleAtlas } from './sample-atlas';
import type { SettingLight } from './setting-light';

/** The room of a lit scheme as mirrors see it: light of the picture's own nodes and texels, lamps and the outdoors by direction. */
export function mirroredRoomOf(
  { room, transport }: Pick<RoomBasis, 'room' | 'transport'>,
  lit: LitScheme,
  { levels }: Pick<SettingLight, 'levels'>,
  maps: ByLayer<DirectMap> | null,
): MirroredRoom {
  const { fine } = room.light;
  const faces = brightFaces(fine, transport, levels);
  const place = new Float64Array(3);
  return {
    bvh: transport.fineBvh,
    surfaceOf: (rect) => fine[rect]!.surface,
    finishOf(surface) {
      const { surface: id, average } = lit.solved.scheme.surfaces[surface]!;
      return { id, average };
    },
    directAt(rect, u, v, out) {
      if (!maps) {
        samplePoint(fine[rect]!, u, v, place);
        out.set(directAt(room.light, transport, [place[0]!, place[1]!, place[2]!], normalOf(fine[rect]!)));
        return;
      }
      DIRECT_LAYERS.forEach(({ firstGroup }, layer) => {
        const map = maps[layer];
        for (let channel = 0; channel < CHANNELS; channel++) {
          const group = firstGroup + channel;
          if (!map || !(levels[group]! > 0)) continue;
          out[group] = sampleAtlas(map.atlas, rect, u, v, (texel) => map.data[CHANNELS * texel + channel]!);
        }
      });
    },
    addIndirect(rect, u, v, group, weight, out) {
      const light = lit.nodeLight[group];
      if (!light) return;
      // The nearest node will do: a lobe averages over many.
      const nu = lit.nodes.atlas.blocks[4 * rect + 2]!;
      const nv = lit.nodes.atlas.blocks[4 * rect + 3]!;
      const node = lit.nodes.first[rect]! + Math.round(v * (nv - 1)) * nu + Math.round(u * (nu - 1));
      for (let band = 0; band < BAND_COUNT; band++) out[band]! += weight * light[node * BAND_COUNT + band]!;
    },
    faceOf: (rect) => faces.get(rect) ?? null,
    faces: [...new Set(faces.values())].filter(({ isOn }) => isOn),
  };
}

/** Unit normal of the front. */
export function normalOf(rect: Rect): Vec3 {
  const { axis, sign } = rectNormal(rect);
  return [0, 1, 2].map((k) => (k === axis ? sign : 0)) as unknown as Vec3;
}
