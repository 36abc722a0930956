/** An open reader of DXF (ezdxf), by whichever Python of the machine has it; undefined where none does. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const PYTHON = ['python3', '/usr/bin/python3'].find((python) => spawnSync(python, ['-c', 'import ezdxf']).status === 0);

/** What it finds: kinds of entity with their counts, faults its auditor names, layers, and the box of all places of lines. */
export interface DxfRead {
  readonly kinds: Readonly<Record<string, number>>;
  readonly faults: number;
  readonly layers: readonly string[];
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
}

const SCRIPT = `
import ezdxf, json, sys
from collections import Counter
d = ezdxf.readfile(sys.argv[1])
m = list(d.modelspace())
xy = [p for e in m if e.dxftype() == 'LINE' for p in (e.dxf.start, e.dxf.end)]
xy += [v.dxf.location for e in m if e.dxftype() == 'POLYLINE' for v in e.vertices]
print(json.dumps(dict(kinds=Counter(e.dxftype() for e in m), faults=len(d.audit().errors), layers=sorted({e.dxf.layer for e in m}),
  left=min(p[0] for p in xy), right=max(p[0] for p in xy), bottom=min(p[1] for p in xy), top=max(p[1] for p in xy))))
`;

export const canReadDxf = PYTHON !== undefined;

export const readDxf = (text: string): DxfRead => {
  const folder = mkdtempSync(join(tmpdir(), 'dxf-'));
  try {
    const file = join(folder, 'sheet.dxf');
    writeFileSync(file, text);
    const { status, stdout, stderr } = spawnSync(PYTHON ?? '', ['-c', SCRIPT, file], { encoding: 'utf8' });
    if (status !== 0) throw new Error(stderr);
    return JSON.parse(stdout) as DxfRead;
  } finally {
    rmSync(folder, { recursive: true });
  }
};
