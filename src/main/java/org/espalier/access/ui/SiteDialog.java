package org.espalier.access.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.springframework.dao.DuplicateKeyException;

/** Changes code, name or time zone of a hospital. */
final class SiteDialog extends Dialog {

    private final SiteForm form = new SiteForm();

    SiteDialog(SiteService sites, Site site, Runnable done) {
        setHeaderTitle(Texts.text("access.site.change.of", site.name()));
        form.show(site);
        add(new Paragraph(Texts.text("access.site.change.say")), form);
        getFooter()
                .add(
                        new Button(Texts.text("access.cancel"), click -> close()),
                        new Button(Texts.text("access.factor.save"), click -> save(sites, site, done)));
    }

    private void save(SiteService sites, Site site, Runnable done) {
        form.read().ifPresent(data -> {
            try {
                sites.change(site.id(), data);
            } catch (DuplicateKeyException e) {
                form.refuseCode();
                return;
            }
            close();
            done.run();
        });
    }
}
