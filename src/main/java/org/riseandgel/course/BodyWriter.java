package org.riseandgel.course;

import java.util.List;
import java.util.Map;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.renderer.html.HtmlRenderer;
import org.riseandgel.core.quantity.DecimalMark;

/** Writes the text of a lesson as HTML. Raw HTML is never passed on, and only addresses known to be ours are linked. */
final class BodyWriter {
    private final HtmlRenderer renderer;

    BodyWriter(Map<Node, Heading> headings, DecimalMark mark, String emergency) {
        this.renderer = HtmlRenderer.builder()
                .extensions(List.of(TablesExtension.create()))
                .escapeHtml(true)
                .sanitizeUrls(true)
                .attributeProviderFactory(context -> (node, tag, attributes) -> {
                    if (headings.containsKey(node)) {
                        attributes.put("id", headings.get(node).anchor());
                    } else if (node instanceof TableCell cell && cell.isHeader()) {
                        attributes.put("scope", "col");
                    } else if (node instanceof Link link
                            && link.getDestination().startsWith(Glossary.ADDRESS)) {
                        attributes.put("class", "term");
                    }
                })
                .nodeRendererFactory(context -> new BlockWriter(context, mark, emergency))
                .build();
    }

    String write(Node document) {
        return renderer.render(document);
    }
}
