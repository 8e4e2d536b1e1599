package org.espalier.stock.code;

/** Why a code could not be read. */
public enum CodeProblem {
    EMPTY,
    NEITHER,
    UNKNOWN_IDENTIFIER,
    NOTHING_AFTER,
    TOO_SHORT,
    TOO_LONG,
    WRONG_CHARACTER,
    WRONG_CHECK_DIGIT,
    WRONG_CHECK_CHARACTER,
    NO_SUCH_DATE,
    NO_SUCH_TIME,
    NOT_IN_LIST,
    NOT_ALLOWED,
    NOT_TOGETHER,
    SAID_TWICE,
    NO_LABELLER,
    NO_SECONDARY_FORM,
    NOT_OF_ONE_LABEL
}
