import { Choices } from '../parts/Choices';
import { reread } from '../words/spoken';
import { SAMPLE_STAND } from '../words/stand';

type Scene = keyof typeof SAMPLE_STAND.scene;

export interface SceneSwitchProps {
  readonly scene: Scene;
  readonly onScene: (scene: Scene) => void;
}

const SCENES = reread(() => (['room', 'stand'] as const).map((id) => ({ id, name: SAMPLE_STAND.scene[id] })));

/** The room, or its finishes as samples on a stand. */
export function SceneSwitch({ scene, onScene }: SceneSwitchProps) {
  return <Choices className="scenes" label={SAMPLE_STAND.scenes} choices={SCENES} chosen={scene} onChoose={onScene} />;
}
