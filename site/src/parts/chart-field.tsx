import type { JSX } from "preact";
import { tableFromHtml } from "../work/table-from-html.ts";

/** More characters than any chart has; a larger file is not read into the page. */
export const LONGEST_CHART = 2_000_000;

interface ChartFieldProps {
  readonly id: string;
  readonly label: string;
  readonly hint: string;
  readonly placeholder?: string;
  readonly value: string;
  readonly rows?: number;
  readonly isWrong: boolean;
  readonly describedBy?: string;
  readonly onInput: (text: string) => void;
  /** A text that came as a whole: pasted over the old one, or dropped as a file. */
  readonly onReplace: (text: string) => void;
}

/** A field for the text of a chart: typed, pasted (also as a table of a web page), or dropped as a file. */
export function ChartField(props: ChartFieldProps): JSX.Element {
  const { id, label, hint, placeholder, value, rows, isWrong, describedBy, onInput, onReplace } = props;
  const takeFile = (file: File | undefined) => {
    if (file === undefined || file.size > LONGEST_CHART) return;
    void file.text().then(onReplace);
  };
  return (
    <div class="field">
      <label class="label" for={id}>
        {label}
      </label>
      <p id={`${id}-hint`} class="hint">
        {hint}
      </p>
      <textarea
        id={id}
        value={value}
        rows={rows ?? 7}
        placeholder={placeholder}
        wrap="off"
        spellcheck={false}
        autocomplete="off"
        aria-invalid={isWrong}
        aria-describedby={describedBy === undefined ? `${id}-hint` : `${id}-hint ${describedBy}`}
        onInput={(event) => onInput(event.currentTarget.value)}
        onPaste={(event) => {
          const table = tableFromHtml(
            event.clipboardData?.getData("text/html").slice(0, LONGEST_CHART) ?? "",
          );
          if (table === undefined) return;
          event.preventDefault();
          const { selectionStart, selectionEnd } = event.currentTarget;
          onReplace(value.slice(0, selectionStart) + table + value.slice(selectionEnd));
        }}
        onDragOver={(event) => event.preventDefault()}
        onDrop={(event) => {
          const file = event.dataTransfer?.files[0];
          if (file === undefined) return;
          event.preventDefault();
          takeFile(file);
        }}
      />
    </div>
  );
}
