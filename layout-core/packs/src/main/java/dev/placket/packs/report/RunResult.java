package dev.placket.packs.report;

/**
 * What a run leaves beside its files.
 *
 * <p>The bytes are shared, not copied: they are only handed on.
 *
 * @param account what there is to say
 * @param json {@code fit.json} as it was written
 */
@SuppressWarnings("ArrayRecordComponent")
public record RunResult(ReportContent account, byte[] json) {}
