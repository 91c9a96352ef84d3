/**
 * The front door: from a document and the shop's lists to every answer. {@link buildup.engine.Answers} answers a question
 * when it is first asked, and knows which question stands on which:
 *
 * <pre>{@code
 * Notices said = new Notices();
 * Document document = DocumentReader.read("cornice.yaml", bytes, said).orElseThrow();
 * Answer answer = Answer.of(document, Catalog.builtIn());
 * double height = answer.known().orElseThrow().section().totals().height();
 * List<Notice> notices = answer.notices();
 * }</pre>
 *
 * <p>Data flows one way: a document is read into a {@link buildup.engine.section.stack.Stack}, placed, composed into a {@link
 * buildup.engine.section.compose.Section}, and asked. Inches as {@code double}; x out from the wall plane, y up from the stack's
 * datum. Nothing here opens a file, prints or draws.
 */
@NullMarked
package buildup.engine;

import org.jspecify.annotations.NullMarked;
