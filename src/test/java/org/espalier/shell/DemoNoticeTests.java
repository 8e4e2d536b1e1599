package org.espalier.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DemoNoticeTests {

    @Test
    void saysInADemonstrationThatAllIsInvented() {
        var notice = new DemoNotice(true);
        assertThat(notice.isVisible()).isTrue();
        assertThat(notice.getElement().getText()).contains("invented");
    }

    @Test
    void isNotSeenAnywhereElse() {
        assertThat(new DemoNotice(false).isVisible()).isFalse();
    }
}
