import type { JSX } from "preact";

interface ChoiceFieldProps<Value extends string> {
  readonly name: string;
  readonly legend: string;
  readonly value: Value;
  readonly choices: readonly (readonly [value: Value, label: string])[];
  readonly onChange: (value: Value) => void;
}

/** One of a few choices, all in sight. */
export function ChoiceField<Value extends string>(props: ChoiceFieldProps<Value>): JSX.Element {
  const { name, legend, value, choices, onChange } = props;
  return (
    <fieldset>
      <legend>{legend}</legend>
      <div class="options">
        {choices.map(([choice, label]) => (
          <label key={choice}>
            <input
              type="radio"
              name={name}
              value={choice}
              checked={value === choice}
              onChange={() => onChange(choice)}
            />
            {label}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
