package org.espalier.opinion.ui;

import org.espalier.opinion.AskService;
import org.espalier.opinion.ClosingService;
import org.espalier.opinion.OpinionFilmService;
import org.espalier.opinion.OpinionService;
import org.espalier.platform.Drafts;
import org.springframework.stereotype.Component;

/** What the parts of a thread ask. */
@Component
record ThreadServices(
        OpinionService opinions, OpinionFilmService films, AskService asks, ClosingService closings, Drafts drafts) {}
