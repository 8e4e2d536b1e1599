package org.espalier.access.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.espalier.kit.PageParts;
import org.espalier.kit.Texts;

/** A list by name of which the first stand there at once; the others are found by a part of what they are called. */
final class FoundList<T> extends Composite<Div> {

    private static final int SHOWN = 25;

    private final String othersKey;
    private final Function<T, String> called;
    private final Function<T, ListItem> toLine;
    private final TextField find;
    private final UnorderedList list = new UnorderedList();
    private final Paragraph others = new Paragraph();
    private List<T> all = List.of();

    /**
     * @param findKey label of the field
     * @param othersKey says how many more there are
     * @param called the words in which a part is looked for
     */
    FoundList(String findKey, String othersKey, Function<T, String> called, Function<T, ListItem> toLine) {
        this.othersKey = othersKey;
        this.called = called;
        this.toLine = toLine;
        find = new TextField(Texts.text(findKey));
        find.addClassName("admin-find");
        find.setValueChangeMode(ValueChangeMode.LAZY);
        find.addValueChangeListener(change -> find());
        list.addClassName("admin-list");
        others.addClassName("small");
        var order = PageParts.paragraph("small", Texts.text("access.by-name"));
        getContent().add(find, order, list, others);
    }

    void show(List<T> fresh) {
        all = fresh;
        find();
    }

    private void find() {
        var part = find.getValue().strip().toLowerCase(Locale.ROOT);
        var found = all.stream()
                .filter(one -> called.apply(one).toLowerCase(Locale.ROOT).contains(part))
                .toList();
        list.removeAll();
        found.stream().limit(SHOWN).map(toLine).forEach(list::add);
        others.setText(Texts.text(othersKey, Math.max(0, found.size() - SHOWN)));
        others.setVisible(found.size() > SHOWN);
    }
}
