import type { JSX } from "preact";
import { useState } from "preact/hooks";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";
import { LONGEST_FRAGMENT } from "../work/fragment.ts";

interface LinkRowProps {
  readonly words: Words["parts"];
  /** The fragment of the state as it is now, without the `#`. */
  readonly fragment: () => string;
  readonly tooLong: number | undefined;
}

/** Copies a link that holds the whole page. */
export function LinkRow({ words, fragment, tooLong }: LinkRowProps): JSX.Element {
  const [said, setSaid] = useState("");
  const copy = async () => {
    history.replaceState(null, "", `#${fragment()}`);
    try {
      await navigator.clipboard.writeText(location.href);
      setSaid(words.copied);
    } catch {
      setSaid(words.notCopied);
    }
  };
  return (
    <div class="screen-only">
      <div class="row">
        <button type="button" class="quiet" disabled={tooLong !== undefined} onClick={() => void copy()}>
          {words.copyLink}
        </button>
        <output aria-live="polite">{said}</output>
      </div>
      {tooLong === undefined ? null : (
        <p class="problem warning">{fill(words.linkTooLong, { count: tooLong, limit: LONGEST_FRAGMENT })}</p>
      )}
    </div>
  );
}
