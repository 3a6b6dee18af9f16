package org.ionohaul.link;

/** What a burst says. */
public enum Message {
    /** Is anyone there? */
    CALL,
    /** Here I am. */
    CALL_ANSWER,
    /** One step of getting to know each other; numbered from 0. */
    INTRODUCTION,
    /** The answer to the introduction of the same number. */
    INTRODUCTION_ANSWER,
    /** Please send what you have for me: reverses the direction of information. */
    REQUEST,
    /** I have a file of that number; it is so many bytes long. */
    OFFER,
    /** Send the file of that number from that byte on. */
    ACCEPT,
    /** Frames of a file. */
    OVER,
    /** What the receiver holds of a file. */
    ACKNOWLEDGEMENT,
    /** Please say again what you hold. */
    POLL,
    /** I am done and hang up. */
    HANG_UP,
    /** Understood; I hang up too. */
    HANG_UP_ANSWER
}
