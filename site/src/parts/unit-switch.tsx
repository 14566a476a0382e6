import type { JSX } from "preact";
import type { Words } from "../words/index.ts";
import type { ShownUnit } from "./lengths.ts";

interface UnitSwitchProps {
  readonly unit: ShownUnit;
  readonly words: Words["parts"];
  readonly onChange: (unit: ShownUnit) => void;
}

/** Which unit lengths are shown in. What people wrote stays as they wrote it. */
export function UnitSwitch({ unit, words, onChange }: UnitSwitchProps): JSX.Element {
  return (
    <fieldset class="row unit-switch screen-only">
      <legend class="unit-legend">{words.unit}</legend>
      <span class="switch">
        {(["cm", "in"] as const).map((choice) => (
          <label key={choice}>
            <input
              type="radio"
              name="unit"
              value={choice}
              checked={unit === choice}
              onChange={() => onChange(choice)}
            />
            {words[choice]}
          </label>
        ))}
      </span>
    </fieldset>
  );
}
