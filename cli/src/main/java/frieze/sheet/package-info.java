/**
 * Everything that a person looks at on paper.
 *
 * <p>In: {@link frieze.sheet.SheetFacts}, plain facts of a job that has been planned, written and
 * read back. Out: a setup sheet (HTML), a report for machines (JSON), shop drawings (SVG) and
 * pictures of the stock (PNG), as text and bytes; nothing here touches the disk.
 *
 * <p>Read {@link frieze.sheet.SheetFacts}, {@link frieze.sheet.PanelFacts}; then {@code
 * SetupSheet}, {@code Drawing}, {@code Shading}, {@code ReportJson}.
 */
@NullMarked
package frieze.sheet;

import org.jspecify.annotations.NullMarked;
