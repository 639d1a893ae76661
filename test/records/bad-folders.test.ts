import { chmodSync, mkdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { contentFolder, SMALLEST_WORKSHOP } from "../support/content-folder.ts";
import { checkTold, toldOf } from "./told.ts";

/** A content folder that something is done to before it is read. */
function folderWith(
  prepare: (content: string, home: string) => void,
): ReturnType<typeof contentFolder> {
  const folder = contentFolder(SMALLEST_WORKSHOP);
  prepare(folder.content, folder.home);
  return folder;
}
const told = (prepare: (content: string, home: string) => void): readonly string[] =>
  toldOf(folderWith(prepare)).lines;
const OUTSIDE = "records/folder";

describe("slugs", () => {
  checkTold([
    {
      what: "two files for one",
      files: { "pigments/lamp-black.yml": "name: Lamp black\n" },
      told: "content/pigments/lamp-black.yml:1:1 error There is a second file for lamp-black beside content/pigments/lamp-black.yaml records/duplicate",
    },
    {
      what: "two readings of one name",
      files: { "readings/lamp-black.txt": "CGATS.17\n" },
      told: "content/readings/lamp-black.txt:1:1 error There is a second file for the reading lamp-black beside content/readings/lamp-black.csv records/duplicate",
    },
    {
      what: "a name with blanks and capitals",
      files: { "pigments/Bone Black.yaml": "name: Bone black\n" },
      told: 'content/pigments/Bone Black.yaml:1:1 error The file name "Bone Black" can\'t be an address: use lower-case letters, digits and single hyphens records/slug',
    },
    {
      what: "a name of dots",
      files: {
        "pigments/...yaml": "name: Bone black\n",
        "pigments/x...yaml": "name: Bone black\n",
      },
      told: 'content/pigments/x...yaml:1:1 error The file name "x.." can\'t be an address: use lower-case letters, digits and single hyphens records/slug',
    },
  ]);
});

describe("files that do not belong", () => {
  checkTold([
    {
      what: "a strange file and a strange folder are warned of",
      files: { "pigment/lamp-black.yaml": "name: x\n", "colours/draft.docx": "x" },
      told: [
        "content/colours/draft.docx:1:1 warning draft.docx is left out: colours/ holds files ending in .md records/folder",
        "content/pigment:1:1 warning pigment is left out: a content folder holds workshop.yaml, prices.csv, pigments/, vehicles/, colours/, answers/, lots/, trials/, readings/, sources/, photographs/; nearest: pigments records/folder",
      ],
    },
    {
      what: "a workbook of a spreadsheet is told how to be saved",
      files: { "readings/drawdowns.XLSX": "x" },
      told: "content/readings/drawdowns.XLSX:1:1 warning drawdowns.XLSX is left out: readings/ holds files ending in .csv, .txt, .cgats, .it8, .cxf, .xml, and this is a spreadsheet's workbook: save the sheet as CSV records/folder",
    },
    {
      what: "notes beside the records and hidden files are let be",
      files: {
        "README.md": "Ours.\n",
        "how.txt": "x",
        ".git/config": "x",
        "colours/.draft.md.swp": "x",
      },
      told: [],
    },
  ]);
});

describe("what can't be read", () => {
  test("a content folder that is not there", () => {
    expect(told((content) => rmSync(content, { recursive: true }))).toEqual([
      "content:1:1 error The content folder can't be read, since nothing is there: it is a folder with a workshop.yaml in it records/folder",
    ]);
  });

  test("a file in place of the content folder", () => {
    expect(
      told((content) => {
        rmSync(content, { recursive: true });
        writeFileSync(content, "");
      }),
    ).toEqual([
      "content:1:1 error The content folder can't be read, since it is not a folder: it is a folder with a workshop.yaml in it records/folder",
    ]);
  });

  test("an empty content folder", () => {
    expect(
      told((content) => {
        rmSync(content, { recursive: true });
        mkdirSync(content);
      }),
    ).toEqual([
      "content/workshop.yaml:1:1 error workshop.yaml is missing: it gives the workshop's name at least records/folder",
    ]);
  });

  test("a workshop.yaml that is missing is the only complaint", () => {
    expect(told((content) => rmSync(join(content, "workshop.yaml")))).toEqual([
      "content/workshop.yaml:1:1 error workshop.yaml is missing: it gives the workshop's name at least records/folder",
    ]);
  });

  test("a file in place of a folder: one complaint, none about what refers into it", () => {
    expect(
      told((content) => {
        rmSync(join(content, "pigments"), { recursive: true });
        writeFileSync(join(content, "pigments"), "");
      }),
    ).toEqual([
      "content/pigments:1:1 error The folder can't be read, since it is not a folder records/folder",
    ]);
  });

  test("a folder in place of a file", () => {
    expect(told((content) => mkdirSync(join(content, "pigments", "bone-black.yaml")))).toEqual([
      "content/pigments/bone-black.yaml:1:1 error A folder stands where a file would records/folder",
    ]);
  });

  test.skipIf(process.getuid?.() === 0)(
    "a folder and a file without permission (not as root, who may read all)",
    () => {
      const folder = folderWith((content) => {
        chmodSync(join(content, "readings"), 0o000);
        chmodSync(join(content, "pigments", "lamp-black.yaml"), 0o000);
      });
      try {
        expect(toldOf(folder).lines).toEqual([
          "content/pigments/lamp-black.yaml:1:1 error The file can't be read, since permission is denied records/folder",
          "content/readings:1:1 error The folder can't be read, since permission is denied records/folder",
        ]);
      } finally {
        chmodSync(join(folder.content, "readings"), 0o700);
      }
    },
  );

  test("a file past 8 MB is not taken into memory; what refers to it is no second fault", () => {
    expect(
      told((content) =>
        writeFileSync(
          join(content, "pigments", "lamp-black.yaml"),
          `name: Lamp black\nnote: ${"x".repeat(8 * 1024 * 1024)}`,
        ),
      ),
    ).toEqual([
      "content/pigments/lamp-black.yaml:1:1 error The file has 8388631 bytes, and at most 8388608 are read records/folder",
    ]);
  });

  test("a reading past 8 MB likewise", () => {
    expect(
      told((content) =>
        writeFileSync(
          join(content, "readings", "lamp-black.csv"),
          `nm,masstone\n${" ".repeat(8 * 1024 * 1024)}`,
        ),
      ),
    ).toEqual([
      "content/readings/lamp-black.csv:1:1 error The file has 8388620 bytes, and at most 8388608 are read records/folder",
    ]);
  });
});

describe("links", () => {
  test("out of the content folder: to a file, to a neighbour whose name begins alike, to a folder, whose names are not read", () => {
    expect(
      told((content, home) => {
        mkdirSync(join(home, "content-other"));
        for (const name of ["oil.yaml", "private.pem"])
          writeFileSync(join(home, "content-other", name), "name: Oil\nkind: oil\n");
        symlinkSync(
          join(home, "content-other", "oil.yaml"),
          join(content, "pigments", "bone-black.yaml"),
        );
        symlinkSync("/etc/passwd", join(content, "readings", "passwords.csv"));
        symlinkSync(join(home, "content-other"), join(content, "vehicles"));
      }),
    ).toEqual([
      `content/pigments/bone-black.yaml:1:1 error The link leads out of the content folder, and is not followed ${OUTSIDE}`,
      `content/readings/passwords.csv:1:1 error The link leads out of the content folder, and is not followed ${OUTSIDE}`,
      `content/vehicles:1:1 error The link leads out of the content folder, and is not followed ${OUTSIDE}`,
    ]);
  });

  test("round in a circle, and to nothing", () => {
    expect(
      told((content) => {
        symlinkSync(
          join(content, "pigments", "circle.yaml"),
          join(content, "pigments", "circle.yaml"),
        );
        symlinkSync(
          join(content, "pigments", "nothing.yaml"),
          join(content, "pigments", "gone.yaml"),
        );
      }),
    ).toEqual([
      "content/pigments/circle.yaml:1:1 error The file can't be read, since a link leads round in a circle records/folder",
      "content/pigments/gone.yaml:1:1 error The file can't be read, since nothing is there records/folder",
    ]);
  });

  test("within the content folder, and a content folder that is a link itself, are followed", () => {
    const folder = folderWith((content, home) => {
      mkdirSync(join(content, ".kept"));
      writeFileSync(join(content, ".kept", "lamp-black.yaml"), "name: Lamp black\n");
      rmSync(join(content, "pigments", "lamp-black.yaml"));
      symlinkSync(
        join(content, ".kept", "lamp-black.yaml"),
        join(content, "pigments", "lamp-black.yaml"),
      );
      symlinkSync(content, join(home, "linked"));
    });
    expect(toldOf(folder)).toEqual({ lines: [], sound: true });
    expect(toldOf({ ...folder, content: join(folder.home, "linked") })).toEqual({
      lines: [],
      sound: true,
    });
  });
});

test("a folder that is spelt otherwise is told once, and nothing that refers into it", () => {
  const { "colours/lamp-black.md": colour, ...rest } = SMALLEST_WORKSHOP;
  const { lines, sound } = toldOf(
    contentFolder({
      ...rest,
      "workshop.yaml": "name: Test Workshop\nstrengthReference: lamp-black\ncurrency: GBP\n",
      "prices.csv": "colour,ml,price\nlamp-black,40,9\n",
      "colors/lamp-black.md": colour,
    }),
  );
  expect(lines).toEqual([
    "content/colors:1:1 error colors is left out: a content folder holds workshop.yaml, prices.csv, pigments/, vehicles/, colours/, answers/, lots/, trials/, readings/, sources/, photographs/; nearest: colours records/folder",
  ]);
  expect(sound).toBe(false);
});
