import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useRef } from 'react';
import { GLSL3, type Group, type PerspectiveCamera, RawShaderMaterial } from 'three';
import type { AtlasLayout } from '../engine/light/types';
import type { Look } from '../kitchen/look';
import type { CameraRig } from './camera-rig';
import { FrameDrawer } from './frame';
import type { FrameParts } from './frame-parts';
import { HeldCard } from './HeldCard';
import { LookMeshes } from './LookMeshes';
import { lightTexelsOf } from './light-textures';
import type { LookSlot } from './look-slot';
import { OutlineMask } from './outline-mask';
import { registerDrawer } from './read-pixels';
import { RoomStage } from './room-stage';
import { BLACK_SHADERS } from './shader-sources';
import type { PictureProps } from './types';
import { useDisposable } from './use-disposable';
import { WhiteCard } from './WhiteCard';

type SceneProps = Pick<
  PictureProps,
  | 'room'
  | 'light'
  | 'look'
  | 'beside'
  | 'sheen'
  | 'mode'
  | 'marksClipped'
  | 'outlined'
  | 'mark'
  | 'cardColor'
  | 'card'
  | 'markIsRight'
  | 'onFrame'
> & {
  readonly rig: CameraRig;
  /** Grows when the context came back: what was drawn into textures is lost. */
  readonly contextVersion: number;
};

/** What is inside the canvas: the room in one look, or in two side by side. */
export function Scene(props: SceneProps) {
  const { room, light, look, beside, sheen, outlined, mark, cardColor, onFrame, rig, contextVersion } = props;
  const { mode = 'color', marksClipped = false, card, markIsRight = false } = props;
  const renderer = useThree((state) => state.gl);
  const scene = useThree((state) => state.scene);
  const camera = useThree((state) => state.camera) as PerspectiveCamera;
  const invalidate = useThree((state) => state.invalidate);
  const drawer = useDisposable(() => new FrameDrawer(), []);
  const directLayout = useSameLayout(light.directAtlas);
  const nodeLayout = useSameLayout(light.nodeAtlas);

  const stage = useDisposable(
    () => new RoomStage(room, light, lightTexelsOf(renderer), renderer.capabilities.getMaxAnisotropy()),
    [room, directLayout, nodeLayout, renderer],
  );
  const isSplit = beside != null;
  const left = useDisposable(() => stage.createSlot(), [stage]);
  const right = useDisposable(() => (isSplit ? stage.createSlot() : null), [stage, isSplit]);
  const black = useDisposable(() => new RawShaderMaterial({ ...BLACK_SHADERS, glslVersion: GLSL3 }), []);
  const outlineKey = outlined.join();
  const outline = useDisposable(
    () => (outlineKey === '' ? null : new OutlineMask(stage, outlineKey.split(',').map(Number))),
    [stage, outlineKey],
  );
  const leftGroup = useRef<Group>(null);
  const rightGroup = useRef<Group>(null);

  useLayoutEffect(() => {
    stage.showLight(light, right ? [left, right] : [left]);
  }, [stage, left, right, light]);

  useLayoutEffect(() => {
    const shown: [LookSlot, Look][] = [[left, look]];
    if (right && beside) shown.push([right, beside]);
    stage.showLooks(shown);
  }, [stage, left, right, look, beside]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a restored context is the reason, not an input
  useLayoutEffect(() => {
    left.expire();
    right?.expire();
  }, [left, right, contextVersion]);

  useEffect(() => {
    invalidate();
  });

  const partsNow = (): FrameParts | null => {
    const halves = [];
    if (leftGroup.current) halves.push({ slot: left, group: leftGroup.current });
    if (right && rightGroup.current) halves.push({ slot: right, group: rightGroup.current });
    if (halves.length === 0) return null;
    return { renderer, scene, camera, rig, shared: stage.shared, sheen, mode, marksClipped, halves, outline };
  };

  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useFrame(() => {
    const parts = partsNow();
    if (!parts || renderer.getContext().isContextLost()) return;
    const due = drawer.draw(parts, performance.now());
    clearTimeout(timer.current);
    if (due === 0) invalidate();
    else if (due !== null) timer.current = setTimeout(() => invalidate(), due);
    onFrame?.(due);
  }, 1);
  useEffect(() => () => clearTimeout(timer.current), []);

  useEffect(() =>
    registerDrawer(renderer.domElement, {
      shows: { looks: beside ? [look, beside] : [look], light },
      drawSharp() {
        const parts = partsNow();
        if (parts) drawer.draw(parts, performance.now(), true);
        return renderer.getContext();
      },
      drawBeside(shot) {
        const parts = partsNow();
        if (!parts || renderer.getContext().isContextLost()) return null;
        return drawer.drawBeside(parts, performance.now(), shot);
      },
    }),
  );

  const marked = mark ? room.light.fine[mark.rect] : undefined;
  const held =
    mark && marked && card ? (
      <HeldCard rect={marked} mark={mark} paint={card} shared={stage.shared} />
    ) : mark && marked && cardColor ? (
      <WhiteCard rect={marked} mark={mark} color={cardColor} shared={stage.shared} />
    ) : null;
  const isHeldRight = markIsRight && right !== null;
  return (
    <>
      <LookMeshes ref={leftGroup} stage={stage} slot={left} black={black}>
        {isHeldRight ? null : held}
      </LookMeshes>
      {right && (
        <LookMeshes ref={rightGroup} stage={stage} slot={right} black={black}>
          {isHeldRight ? held : null}
        </LookMeshes>
      )}
    </>
  );
}

/** The layout given, but the same object as long as its contents are the same: refined light comes in new records. */
function useSameLayout(layout: AtlasLayout): AtlasLayout {
  const kept = useRef(layout);
  const before = kept.current;
  const same =
    before === layout ||
    (before.width === layout.width &&
      before.height === layout.height &&
      before.blocks.length === layout.blocks.length &&
      before.blocks.every((value, i) => value === layout.blocks[i]));
  if (!same) kept.current = layout;
  return kept.current;
}
