import type { ComponentChildren, JSX } from "preact";
import type { afterwards } from "tapewise";
import { fill } from "../words/fill.ts";
import type { Words } from "../words/index.ts";

interface DrawingProps {
  readonly item: afterwards.BodyCheckItemId;
  readonly words: Words["arrives"];
}

/** What to look at, with numbers that the list under the drawing explains. */
export function BodyCheckDrawing({ item, words }: DrawingProps): JSX.Element | null {
  const drawing = DRAWINGS[item];
  const labels = words.labels[item];
  if (drawing === undefined) return null;
  return (
    <figure class="check-drawing">
      <svg
        class="body-drawing"
        viewBox={drawing.view}
        role="img"
        aria-label={fill(words.drawing, { labels: labels.join("; ") })}
      >
        {drawing.content}
      </svg>
      <figcaption>
        <ol>
          {labels.map((label) => (
            <li key={label}>{label}</li>
          ))}
        </ol>
      </figcaption>
    </figure>
  );
}

function Mark({ n, x, y }: { readonly n: number; readonly x: number; readonly y: number }): JSX.Element {
  return (
    <g class="check-mark">
      <circle cx={x} cy={y} r="14" />
      <text x={x} y={y + 6}>
        {n}
      </text>
    </g>
  );
}

/** Somebody from the right side, with the pack behind them. */
function Side({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return (
    <>
      <path
        class="check-pack"
        d="M112 46 C60 30 -8 40 -24 70 C-36 110 -36 250 -22 288 C-6 306 84 306 118 296 C126 260 122 220 116 190 C112 150 118 90 112 46 Z"
      />
      <path
        class="body-skin"
        d="M176 66 C176 78 168 88 158 98 C140 116 130 142 131 172 C132 202 148 226 153 250 C156 268 140 284 132 306 C124 332 138 366 142 424 L214 424 C218 390 224 356 224 326 C224 300 216 282 217 258 C218 232 232 206 232 176 C232 146 222 122 212 106 C208 98 207 88 208 78 Z"
      />
      <path
        class="body-skin"
        d="M168 34 C170 14 186 6 202 7 C220 8 230 22 230 36 L236 52 L229 55 C229 66 226 76 214 77 L200 76 C180 74 166 58 168 34 Z"
      />
      {children}
    </>
  );
}

/** The strap from the back panel over the shoulder, down the front and back under the arm. */
const STRAP = "M120 140 C132 112 158 92 184 92 C212 94 226 126 226 160 C226 196 190 222 122 236";
const BELT = "M120 268 C150 274 192 274 222 268";

function SideStraps({ belt = "muted", strap = "muted" }: { belt?: string; strap?: string }): JSX.Element {
  return (
    <>
      <path class={`check-belt ${belt} edge`} d={BELT} />
      <path class={`check-belt ${belt}`} d={BELT} />
      <path class={`check-strap ${strap} edge`} d={STRAP} />
      <path class={`check-strap ${strap}`} d={STRAP} />
    </>
  );
}

/** Somebody from the front, down to the hips. */
function Front({ children }: { readonly children: ComponentChildren }): JSX.Element {
  return (
    <>
      <path
        class="body-skin"
        d="M142 58 C142 74 145 84 140 92 C132 103 112 106 92 114 C74 121 66 134 61 156 C54 190 48 230 42 268 C39 286 37 300 37 316 L55 319 C60 296 66 276 72 252 C78 228 82 206 86 182 C90 208 98 226 98 250 C98 274 84 290 81 318 C80 340 82 360 84 380 L236 380 C238 360 240 340 239 318 C236 290 222 274 222 250 C222 226 230 208 234 182 C238 206 242 228 248 252 C254 276 260 296 265 319 L283 316 C283 300 281 286 278 268 C272 230 266 190 259 156 C254 134 246 121 228 114 C208 106 188 103 180 92 C175 84 178 74 178 58 Z"
      />
      <ellipse class="body-skin" cx="160" cy="42" rx="28" ry="35" />
      {children}
    </>
  );
}

const PADS = "M122 104 C110 134 106 170 108 214 M198 104 C210 134 214 170 212 214";
const WEBBING = "M108 214 C108 234 102 250 92 266 M212 214 C212 234 218 250 228 266";

function FrontStraps({ strap = "muted" }: { readonly strap?: string }): JSX.Element {
  return (
    <>
      <path class="check-webbing" d={WEBBING} />
      <path class={`check-strap ${strap} edge`} d={PADS} />
      <path class={`check-strap ${strap}`} d={PADS} />
    </>
  );
}

interface Drawing {
  readonly view: string;
  readonly content: JSX.Element;
}

const SIDE = "-60 0 340 430";
const FRONT = "10 0 300 380";

const DRAWINGS: Readonly<Partial<Record<afterwards.BodyCheckItemId, Drawing>>> = {
  "belt-position": {
    view: SIDE,
    content: (
      <Side>
        <SideStraps belt="seen" />
        <path class="check-bone" d="M150 280 C158 260 190 256 206 276" />
        <path class="body-level" d="M120 264 H262" />
        <Mark n={1} x={252} y={244} />
        <Mark n={2} x={170} y={320} />
        <path class="body-leader" d="M240 250 L186 262 M170 306 V276" />
      </Side>
    ),
  },
  "belt-closure": {
    view: "40 0 240 320",
    content: (
      <>
        <path
          class="body-skin"
          d="M96 6 C96 36 104 58 103 84 C102 116 78 146 73 190 C69 232 76 280 82 314 L150 314 C152 292 156 276 160 262 C164 276 168 292 170 314 L238 314 C244 280 251 232 247 190 C242 146 218 116 217 84 C216 58 224 36 224 6 Z"
        />
        <path
          class="body-bone"
          d="M102 150 C98 122 118 112 136 122 C146 132 142 160 132 178 M218 150 C222 122 202 112 184 122 C174 132 178 160 188 178"
        />
        <path class="check-webbing" d="M132 143 C150 146 170 146 188 143" />
        <path
          class="check-belt seen edge"
          d="M86 126 C100 136 116 140 132 142 M234 126 C220 136 204 140 188 142"
        />
        <path
          class="check-belt seen"
          d="M86 126 C100 136 116 140 132 142 M234 126 C220 136 204 140 188 142"
        />
        <rect class="check-buckle" x="150" y="134" width="20" height="20" rx="3" />
        <path class="body-level" d="M132 160 V196 M188 160 V196" />
        <path class="check-distance" d="M132 190 H188" />
        <Mark n={1} x={160} y={218} />
        <Mark n={2} x={110} y={86} />
        <path class="body-leader" d="M110 100 V122" />
      </>
    ),
  },
  "back-panel": {
    view: SIDE,
    content: (
      <Side>
        <SideStraps />
        <path class="body-level" d="M62 98 H156 M62 142 H122" />
        <path class="check-distance" d="M72 98 V142" />
        <circle class="body-point" cx="157" cy="98" r="7" />
        <circle class="check-spot" cx="121" cy="141" r="9" />
        <Mark n={1} x={140} y={66} />
        <Mark n={2} x={128} y={176} />
        <Mark n={3} x={46} y={120} />
      </Side>
    ),
  },
  "shoulder-contact": {
    view: SIDE,
    content: (
      <Side>
        <SideStraps strap="seen" />
        <path class="body-level" d="M122 132 C128 96 152 74 178 80" />
        <Mark n={1} x={248} y={134} />
        <Mark n={2} x={134} y={72} />
      </Side>
    ),
  },
  "upper-straps": {
    view: SIDE,
    content: (
      <Side>
        <SideStraps />
        <path class="check-strap seen edge thin" d="M168 94 L112 46" />
        <path class="check-strap seen thin" d="M168 94 L112 46" />
        <path class="body-level" d="M168 94 H84" />
        <path class="check-distance" d="M124 94 A44 44 0 0 1 134 65" />
        <Mark n={1} x={142} y={36} />
        <Mark n={2} x={98} y={74} />
      </Side>
    ),
  },
  "strap-ends": {
    view: FRONT,
    content: (
      <Front>
        <FrontStraps strap="seen" />
        <path class="body-level" d="M34 182 H110 M34 214 H110" />
        <path class="check-distance" d="M44 182 V214" />
        <circle class="body-point" cx="86" cy="182" r="6" />
        <circle class="check-spot" cx="108" cy="214" r="9" />
        <Mark n={1} x={62} y={160} />
        <Mark n={2} x={138} y={222} />
        <Mark n={3} x={134} y={282} />
        <path class="body-leader" d="M121 278 L98 258" />
      </Front>
    ),
  },
  "sternum-strap": {
    view: FRONT,
    content: (
      <Front>
        <FrontStraps />
        <path class="body-bone" d="M112 118 C128 106 144 112 156 120 M208 118 C192 106 176 112 164 120" />
        <path class="check-strap seen edge thin" d="M110 156 C140 162 180 162 210 156" />
        <path class="check-strap seen thin" d="M110 156 C140 162 180 162 210 156" />
        <Mark n={1} x={160} y={96} />
        <Mark n={2} x={160} y={190} />
        <path class="body-leader" d="M160 176 V164" />
      </Front>
    ),
  },
  "pressure-points": {
    view: FRONT,
    content: (
      <Front>
        <path class="body-bone" d="M112 118 C128 106 144 112 156 120 M208 118 C192 106 176 112 164 120" />
        <path class="body-bone" d="M101 290 C98 262 118 252 136 262 M219 290 C222 262 202 252 184 262" />
        {(
          [
            [92, 118],
            [228, 118],
            [134, 112],
            [186, 112],
            [106, 266],
            [214, 266],
          ] as const
        ).map(([x, y]) => (
          <circle key={`${x} ${y}`} class="check-spot" cx={x} cy={y} r="13" />
        ))}
        <path class="body-level" d="M160 210 m-34 0 a34 24 0 1 0 68 0 a34 24 0 1 0 -68 0" />
        <Mark n={1} x={48} y={98} />
        <Mark n={2} x={160} y={144} />
        <Mark n={3} x={160} y={286} />
        <Mark n={4} x={160} y={210} />
        <path class="body-leader" d="M62 104 L80 114 M148 136 L140 122 M148 282 L118 270" />
      </Front>
    ),
  },
};
