import type { Tag } from './pieces';

/** Writes the structure tree as the parts come, each at the place that its path says. */
export class Structure {
  readonly #doc: PDFKit.PDFDocument;
  readonly #root: PDFKit.PDFStructureElement;
  #open: { tag: Tag; element: PDFKit.PDFStructureElement }[] = [];

  constructor(doc: PDFKit.PDFDocument) {
    this.#doc = doc;
    this.#root = doc.struct('Document');
    doc.addStructure(this.#root);
  }

  /** Draws as content of the last tag of the path. Elements that are not on the path end. */
  part(path: readonly Tag[], draw: () => void): void {
    this.#closeTo(path.findIndex((tag, at) => this.#open[at]?.tag !== tag));
    for (const tag of path.slice(this.#open.length)) {
      const element = this.#doc.struct(tag.type, tag.options);
      this.#last().add(element);
      this.#open.push({ tag, element });
    }
    this.#last().add(draw);
  }

  end(): void {
    this.#closeTo(0);
    this.#root.end();
  }

  #last(): PDFKit.PDFStructureElement {
    return this.#open.at(-1)?.element ?? this.#root;
  }

  #closeTo(depth: number): void {
    if (depth < 0) return;
    for (const { element } of this.#open.splice(depth).reverse()) element.end();
  }
}
