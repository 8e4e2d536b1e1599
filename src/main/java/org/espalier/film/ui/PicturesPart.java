package org.espalier.film.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.spring.annotation.SpringComponent;
import java.time.LocalDate;
import java.util.UUID;
import org.espalier.film.ClinicalPicture;
import org.espalier.film.PictureService;
import org.espalier.kit.DateText;
import org.espalier.kit.ExaminationPart;
import org.espalier.kit.Texts;
import org.espalier.kit.Who;
import org.espalier.patient.ChildId;
import org.springframework.core.annotation.Order;

/** Photos and clips of one child, on the page on which the child is examined. */
@SpringComponent
@Order(20)
class PicturesPart implements ExaminationPart {

    private final PictureService pictures;

    PicturesPart(PictureService pictures) {
        this.pictures = pictures;
    }

    @Override
    public Component of(UUID child, Who who, LocalDate today) {
        return new Pictures(new ChildId(child), today);
    }

    /** The pictures of one child on the screen. */
    @StyleSheet("themes/film.css")
    private final class Pictures extends Composite<Section> {

        private final ChildId child;
        private final UnorderedList list = new UnorderedList();
        private final Paragraph empty = new Paragraph(Texts.text("film.pictures.empty"));

        Pictures(ChildId child, LocalDate today) {
            this.child = child;
            var upload = new PictureUpload(pictures, child, today, this::refresh);
            upload.setVisible(false);
            var add = new Button(Texts.text("film.pictures.add"));
            add.addClickListener(click -> {
                upload.setVisible(true);
                add.setVisible(false);
            });
            var head = new Div(new H2(Texts.text("film.pictures")), add);
            head.addClassName("part-head");
            list.addClassName("pictures");
            empty.addClassName("empty");
            getContent().addClassName("sheet");
            getContent().add(head, empty, list, upload);
            refresh();
        }

        private void refresh() {
            var all = pictures.of(child);
            empty.setVisible(all.isEmpty());
            list.setVisible(!all.isEmpty());
            list.removeAll();
            all.forEach(picture -> list.add(item(picture)));
        }

        private ListItem item(ClinicalPicture picture) {
            var caption = new Span(caption(picture));
            if (picture.withdrawn().isPresent()) {
                return new ListItem(
                        caption,
                        new Paragraph(Texts.text(
                                "film.picture.withdrawn", picture.withdrawn().get())));
            }
            var withdraw = new Button(Texts.text("film.picture.withdraw"), click -> askToWithdraw(picture));
            withdraw.addClassName("link");
            return new ListItem(shown(picture), caption, withdraw);
        }

        private static Component shown(ClinicalPicture picture) {
            var address = "api/pictures/" + picture.id().value();
            var name = Texts.text(
                    picture.kind().isClip() ? "film.picture.clip" : "film.picture.photo",
                    DateText.of(picture.takenOn()));
            if (!picture.kind().isClip()) {
                var photo = new Image(address, name);
                photo.getElement().setAttribute("loading", "lazy");
                return photo;
            }
            var clip = new HtmlContainer("video");
            clip.getElement()
                    .setAttribute("src", address)
                    .setAttribute("controls", true)
                    .setAttribute("muted", true)
                    .setAttribute("playsinline", true)
                    .setAttribute("preload", "metadata")
                    .setAttribute("aria-label", name);
            return clip;
        }

        private static String caption(ClinicalPicture picture) {
            var day = DateText.of(picture.takenOn());
            var consent = Texts.text(
                    "film.picture.agreed",
                    Texts.of(picture.consent().by()),
                    DateText.of(picture.consent().on()));
            return picture.length()
                    .map(length -> Texts.text(
                            "film.picture.caption.clip",
                            day,
                            Math.max(1, Math.round(length.toMillis() / 1000.0)),
                            consent))
                    .orElseGet(() -> Texts.text("film.picture.caption", day, consent));
        }

        private void askToWithdraw(ClinicalPicture picture) {
            new ReasonDialog(Texts.text("film.picture.withdraw"), Texts.text("film.picture.withdraw.help"), reason -> {
                        pictures.withdraw(picture.id(), reason);
                        refresh();
                    })
                    .open();
        }
    }
}
