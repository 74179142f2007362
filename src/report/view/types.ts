/**
 * What the templates see: text, finished, with every key always present. `has…` booleans are the only thing a template
 * may ask about, because an empty text and a change of 0 are both falsy.
 */
export interface NoteView {
  readonly mark: string;
  readonly title: string;
  readonly hasTitle: boolean;
  readonly text: string;
  readonly language: string;
  readonly weakens: boolean;
}
export interface MeasureRow {
  readonly label: string;
  readonly value: string;
  readonly unit: string;
  readonly hasValue: boolean;
  readonly because: string;
  readonly error: string;
  readonly norm: string;
  readonly mark: string;
  readonly hasMark: boolean;
}
export interface JudgementView {
  readonly label: string;
  readonly verdict: string;
  readonly because: string;
  /** Of the report; what stays English is marked in the text. */
  readonly language: string;
}
export interface TableView {
  readonly id: string;
  readonly caption: string;
  readonly hasCaption: boolean;
  readonly columns: readonly {
    readonly title: string;
    readonly unit: string;
    readonly hasUnit: boolean;
    readonly number: boolean;
    /** Has sentences, which need room on a phone. */
    readonly long: boolean;
  }[];
  readonly rows: readonly {
    readonly head: string;
    readonly headNumber: boolean;
    readonly cells: readonly { readonly text: string; readonly number: boolean }[];
  }[];
  readonly note: string;
  readonly hasNote: boolean;
  readonly wide: boolean;
  /** So many columns that paper needs them narrow. */
  readonly crowded: boolean;
  /** Few enough rows to be kept on one page. */
  readonly short: boolean;
  /** Narrow enough for half of the page. */
  readonly half: boolean;
}
export interface FigureView {
  readonly id: string;
  readonly title: string;
  readonly alt: string;
  readonly size: string;
  /** SVG made by this program from escaped text; the only markup a template places unescaped. */
  readonly svg: string;
  readonly source: string;
  readonly hasSource: boolean;
  readonly dataHref: string;
  readonly hasData: boolean;
}
export interface SectionView {
  readonly id: string;
  readonly title: string;
  readonly hasMeasures: boolean;
  readonly measures: readonly MeasureRow[];
  readonly hasErrors: boolean;
  readonly hasNorms: boolean;
  /** Columns a sentence takes that stands in place of a value. */
  readonly span: number;
  readonly hasJudgements: boolean;
  readonly judgements: readonly JudgementView[];
  readonly hasStrips: boolean;
  readonly strips: readonly FigureView[];
  readonly figures: readonly FigureView[];
  readonly hasPanels: boolean;
  readonly panelsTitle: string;
  readonly panels: readonly FigureView[];
  /** Figures and tables of half the page's width, then those that need all of it. */
  readonly hasPieces: boolean;
  readonly small: readonly TableView[];
  readonly tables: readonly TableView[];
  readonly hasNotes: boolean;
  readonly notes: readonly NoteView[];
}
export interface Fact {
  readonly name: string;
  readonly value: string;
}
export interface Head {
  readonly laboratory: string;
  readonly lines: readonly string[];
  readonly hasLogo: boolean;
  readonly logo: string;
  readonly title: string;
  readonly subtitle: string;
  readonly facts: readonly Fact[];
}
export interface KeyMeasure {
  readonly name: string;
  readonly value: string;
  readonly meaning: string;
  readonly hasMeaning: boolean;
  readonly sentence: string;
  readonly hasFigure: boolean;
  readonly figure: FigureView;
}
export interface MethodView {
  readonly title: string;
  readonly language: string;
  readonly id: string;
  readonly equation: string;
  readonly hasEquation: boolean;
  readonly caveat: string;
  readonly hasCaveat: boolean;
  /** The number of the work and the place in it. */
  readonly reference: string;
}
export interface SourcesView {
  readonly methods: readonly MethodView[];
  readonly works: readonly { readonly text: string }[];
}
export interface Frame {
  readonly language: string;
  readonly documentTitle: string;
  readonly style: string;
  readonly edition: string;
  readonly words: unknown;
  readonly head: Head;
  readonly cautions: readonly string[];
  readonly made: readonly Fact[];
  readonly footDigest: string;
}
export interface PractitionerView extends Frame {
  readonly contents: readonly { readonly href: string; readonly title: string }[];
  readonly sentences: readonly string[];
  readonly hasKeys: boolean;
  readonly keys: readonly KeyMeasure[];
  readonly hasRemarks: boolean;
  readonly remarks: readonly RemarkView[];
  readonly sections: readonly SectionView[];
  readonly hasChanges: boolean;
  readonly changes: ChangesView;
  readonly hasMissing: boolean;
  readonly missing: readonly Fact[];
  readonly sources: SourcesView;
  readonly hasSources: boolean;
  readonly dataSmall: readonly TableView[];
  readonly dataWide: readonly TableView[];
  readonly hasData: boolean;
}
export interface RemarkView {
  readonly title: string;
  readonly severity: string;
  readonly found: string;
  readonly limit: string;
  readonly because: string;
  readonly language: string;
  readonly affects: string;
}
export interface ChangeRow {
  readonly label: string;
  readonly before: string;
  readonly now: string;
  readonly change: string;
  readonly interval: string;
  /** The change over the noise of two tests, as a drawing of this program. */
  readonly bar: string;
  readonly hasBar: boolean;
  readonly unit: string;
  readonly verdict: string;
  /** Number of the error's origin below the table. */
  readonly mark: string;
  readonly hasMark: boolean;
}
export interface ChangesView {
  readonly language: string;
  readonly hasTold: boolean;
  readonly told: readonly Fact[];
  readonly hasJudgements: boolean;
  readonly judgements: readonly JudgementView[];
  readonly figures: readonly FigureView[];
  readonly rows: readonly ChangeRow[];
  readonly hasSince: boolean;
  readonly sinceCaption: string;
  readonly since: readonly ChangeRow[];
  readonly hasOrigins: boolean;
  readonly origins: readonly { readonly mark: string; readonly text: string }[];
  readonly hasTrends: boolean;
  readonly trends: readonly FigureView[];
}
export interface ClientView extends Frame {
  readonly sentences: readonly string[];
  readonly keysTitle: string;
  readonly hasKeys: boolean;
  readonly keys: readonly KeyMeasure[];
  readonly sure: readonly string[];
  readonly hasTraining: boolean;
  readonly training: readonly TableView[];
  readonly hasWeeks: boolean;
  readonly weeks: FigureView;
  readonly intensities: readonly Fact[];
  readonly hasIntensities: boolean;
}
export interface ReferralView extends Frame {
  readonly reason: readonly string[];
  readonly hasReason: boolean;
  readonly hasOutside: boolean;
  readonly outside: readonly Fact[];
  readonly measured: readonly Fact[];
  readonly conditions: readonly Fact[];
  readonly medication: string;
  readonly missing: string;
}
