import { cutListCsv, cutSheetsOf, cutSheetTitle, laidSheets, straightCuts } from '@kneewall/documents';
import type { Plan, TradeResults } from '@kneewall/engine';
import { useState } from 'react';
import { handOver } from '../../../files/saveFile.ts';
import { Button } from '../../../look/Button.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { printRoute } from '../../../route/route.ts';
import { useSession, useUnits } from '../../../services.ts';
import { OutcomeOr } from '../OutcomeOr.tsx';
import './Cuts.css';
import { FoldedBoxes } from './FoldedBoxes.tsx';
import { JointSheet } from './JointSheet.tsx';
import { MadeSheet } from './MadeSheet.tsx';
import { PiecePicture } from './PiecePicture.tsx';
import { CutOrder, PieceTable } from './PieceTables.tsx';
import { SheetPicture } from './SheetPicture.tsx';
import { StraightCuts } from './StraightCuts.tsx';

/** All that is cut: sheets one at a time, boxes as they stand when folded, lengths and bags. */
export function CutSheets({ cut, plan }: { cut: TradeResults['materials']['cut']; plan: Plan }) {
  const units = useUnits();
  const some = straightCuts(plan, units).length > 0;
  const none = !cut.ok && cut.because === 'missing';
  return (
    <>
      {none && laidSheets(plan).length > 0 && (
        <Sheet title="Cut sheets">
          <Sheets plan={plan} />
        </Sheet>
      )}
      {!none && (
        <Sheet title="Cut sheets">
          <OutcomeOr outcome={cut} what="How the pieces lie on their sheets">
            {() => <Sheets plan={plan} />}
          </OutcomeOr>
        </Sheet>
      )}
      {cut.ok && cut.value.boxes.some((b) => b.flat.pieces.length > 0) && (
        <Sheet title="The boxes folded">
          <FoldedBoxes boxes={cut.value.boxes.filter((b) => b.flat.pieces.length > 0)} />
        </Sheet>
      )}
      {cut.ok && cut.value.joints.length > 0 && (
        <Sheet title="Between the unit and its ducts">
          <JointSheet joints={cut.value.joints} />
        </Sheet>
      )}
      {cut.ok && cut.value.made.length > 0 && (
        <Sheet title="Caps and reducers of sheet metal">
          <MadeSheet made={cut.value.made} />
        </Sheet>
      )}
      {some && (
        <Sheet title="From lengths and bags">
          <StraightCuts plan={plan} />
        </Sheet>
      )}
    </>
  );
}

function Sheets({ plan }: { plan: Plan }) {
  const units = useUnits();
  const project = useSession((s) => s.project);
  const [at, go] = useState(0);
  const [mark, choose] = useState('');
  const all = laidSheets(plan);
  const laid = all[Math.min(at, all.length - 1)];
  if (!laid) return <NothingFromSheets plan={plan} />;
  const title = cutSheetTitle(laid);
  const piece = laid.pieces.find((p) => p.mark === mark) ?? laid.pieces[0];
  const drawing = cutSheetsOf(plan, project, units)[all.indexOf(laid)];
  return (
    <>
      <p className="cut-steps">
        <Button disabled={at === 0} onClick={() => go(at - 1)}>
          Sheet before
        </Button>
        <span aria-live="polite">{title}</span>
        <Button disabled={at >= all.length - 1} onClick={() => go(at + 1)}>
          Next sheet
        </Button>
      </p>
      <SheetPicture laid={laid} chosen={piece?.mark ?? ''} title={title} />
      <p className="field-help">
        Seen from the side that is cut. Strong: cut through. Dash-dot: the middle of a fold. Dashed: a lap. Long dashes:
        worth keeping. Dot: the corner from which a piece is measured.
      </p>
      <p className="cut-pieces">
        {laid.pieces.map((p) => (
          <Button key={p.mark} aria-pressed={p === piece} onClick={() => choose(p.mark)}>
            {p.mark}: {p.title}
          </Button>
        ))}
      </p>
      {piece && (
        <p className="field-help">
          Measures of {piece.mark} count from the {piece.lies.turned ? 'lower right' : 'lower left'} corner, dotted, of
          the rectangle it lies in.
        </p>
      )}
      {piece && <PiecePicture marked={piece} />}
      {piece && <PieceTable marked={piece} />}
      <CutOrder sheet={laid.sheet} />
      <p className="cut-pieces">
        {drawing && (
          <Button onClick={() => handOver(drawing.file, drawing.svg, 'image/svg+xml')}>
            Save this sheet as a drawing
          </Button>
        )}
        <Button onClick={() => handOver('cut-list.csv', cutListCsv(plan, units), 'text/csv')}>Save the cut list</Button>
      </p>
      <p className="field-help">
        <a href={printRoute({ screen: 'trade', trade: 'air', field: 'routes.ducts.cutting' })}>
          Board, sheets and lengths as your shop sells them
        </a>
        ; where a duct leaves its box stands with the duct.{' '}
        {laid.of === 'panel'
          ? 'Saw outdoors or with a mask.'
          : 'Glass fibre: gloves, sleeves, eye protection and a mask.'}{' '}
        The maker’s instructions and local code stand above this sheet.
      </p>
    </>
  );
}

function NothingFromSheets({ plan }: { plan: Plan }) {
  const units = useUnits();
  return (
    <>
      <p>No duct that is still to be built is made of board or of rectangular metal that can be laid on a sheet.</p>
      {straightCuts(plan, units).length > 0 && (
        <p>
          <Button onClick={() => handOver('cut-list.csv', cutListCsv(plan, units), 'text/csv')}>
            Save the cut list
          </Button>
        </p>
      )}
    </>
  );
}
