package org.espalier.access.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Paragraph;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.espalier.access.Role;
import org.espalier.access.SecondFactorService;
import org.espalier.access.Site;
import org.espalier.kit.Texts;

/** Of which roles a second factor is demanded at a hospital. */
final class SecondFactorDialog extends Dialog {

    private final Map<Role, Checkbox> roles = new EnumMap<>(Role.class);

    SecondFactorDialog(SecondFactorService factors, Site site, Set<Role> demanded, Runnable done) {
        setHeaderTitle(Texts.text("access.factor.title", site.name()));
        add(new Paragraph(Texts.text("access.factor.help")));
        for (var role : Role.values()) {
            if (role != Role.ARCHIVE) {
                var box = new Checkbox(Texts.of(role), demanded.contains(role));
                roles.put(role, box);
                add(box);
            }
        }
        addClassName("admin-form");
        getFooter()
                .add(
                        new Button(Texts.text("access.cancel"), click -> close()),
                        new Button(Texts.text("access.factor.save"), click -> {
                            factors.demandAt(site.id(), chosen());
                            close();
                            done.run();
                        }));
    }

    private Set<Role> chosen() {
        return roles.entrySet().stream()
                .filter(entry -> entry.getValue().getValue())
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }
}
