import type { ReactNode, Ref } from 'react';
import type { Group, RawShaderMaterial } from 'three';
import type { LookSlot } from './look-slot';
import type { RoomStage } from './room-stage';

interface LookMeshesProps {
  readonly stage: RoomStage;
  readonly slot: LookSlot;
  readonly black: RawShaderMaterial;
  /** What is held in this look. */
  readonly children: ReactNode;
  readonly ref: Ref<Group>;
}

/** The room in one look: a mesh per surface, the props, lamp faces and panes. */
export function LookMeshes({ stage, slot, black, children, ref }: LookMeshesProps) {
  const last = stage.surfaces.length;
  return (
    <group ref={ref}>
      {children}
      {stage.surfaces.map(
        (geometry, surface) =>
          geometry && (
            <mesh
              key={stage.room.light.surfaces[surface]}
              geometry={geometry}
              material={slot.surfaces[surface]!}
              renderOrder={stage.drawOrder[surface]!}
              frustumCulled={false}
            />
          ),
      )}
      {slot.propGeometries.map((geometry, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: props have no other identity and their order is fixed per room
        <mesh key={i} geometry={geometry} material={slot.props[i]!} renderOrder={-1} frustumCulled={false} />
      ))}
      {stage.black && <mesh geometry={stage.black} material={black} renderOrder={last} frustumCulled={false} />}
      {stage.lamps && (
        <mesh geometry={stage.lamps} material={slot.lamps} renderOrder={last + 1} frustumCulled={false} />
      )}
      {stage.cloths && (
        <mesh geometry={stage.cloths} material={slot.cloths} renderOrder={last + 1} frustumCulled={false} />
      )}
      {stage.windows && (
        <mesh geometry={stage.windows} material={slot.windows} renderOrder={last + 1} frustumCulled={false} />
      )}
    </group>
  );
}
