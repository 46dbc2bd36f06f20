using WitherAdvisor.Api.Http;
using WitherAdvisor.Fields;
using WitherAdvisor.Loft.Importing;
using WitherAdvisor.LogFiles.Reading;
using WitherAdvisor.Words.Leaf;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Outcomes.Import;

/// <summary>What came of an import as an answer: columns by the names in the file, reasons as sentences.</summary>
internal static class ImportMapping
{
    public static Imported ToResponse(ImportResult<ReadLine> result, WallClock clock, RowWording told) => result switch
    {
        ImportResult<ReadLine>.Previewed preview => new(ToResponse(preview.Tally, kept: false, clock, told), null),
        ImportResult<ReadLine>.Taken taken => new(ToResponse(taken.Tally, taken.Tally.AddsAny, clock, told), null),
        ImportResult<ReadLine>.NothingKept nothing => Imported.Refuse(NothingKept(nothing.Tally)),
        _ => throw new ArgumentOutOfRangeException(nameof(result), result, "Nobody has said what this is answered with."),
    };

    private static ImportResponse ToResponse(ImportTally<ReadLine> tally, bool kept, WallClock clock, RowWording told) => new()
    {
        Kept = kept,
        Rows = tally.Lines,
        New = tally.Count(RowState.New),
        OutcomesAdded = tally.Count(RowState.OutcomeAdded),
        AlreadyThere = tally.Count(RowState.AlreadyThere),
        Odd = tally.Count(RowState.Odd),
        Wrong = tally.Count(RowState.Wrong),
        Report = [.. tally.Shown.Select(line => ToResponse(line, clock, told))],
    };

    private static ImportRowResponse ToResponse(JudgedLine<ReadLine> line, WallClock clock, RowWording told) => new()
    {
        Line = line.Line.Line,
        State = line.State,
        Batch = line.Line.Read is { Batch: { } batch }
            ? $"{batch.TroughId}, {clock.DateAndClock(batch.Batch.LoadedAt)}, {LeafWording.Label(told.Words, batch.Batch.Label)}"
            : null,
        Errors = Errors(line),
        Warnings = [.. line.Oddities.Select(told.Warning)],
    };

    private static ProblemResult NothingKept(ImportTally<ReadLine> tally)
    {
        List<FieldError> errors =
            [.. tally.Unfit.SelectMany(line => Errors(line).Select(error => error.At($"line {line.Line.Line}, column {error.Field}")))];
        List<ProblemWarning> odd =
        [
            .. tally.Unfit.SelectMany(line => line.Oddities.Select(OutcomeRefusals.Warning).Select(warning => warning with { Field = $"line {line.Line.Line}, {warning.Field}" }))
                .Take(Problem.MostErrorsShown),
        ];
        return errors.Count == 0 ? Problem.Unusual(odd) : Problem.InvalidInput(errors, odd);
    }

    private static List<FieldError> Errors(JudgedLine<ReadLine> line) =>
        [.. line.Line.Errors, .. line.Faults.Select(fault => Error(fault, line.Line))];

    private static FieldError Error(LineFault fault, ReadLine line) => fault switch
    {
        LineFault.OtherSite other => FieldError.Of("site", other.Given, $"{other.SiteId}, which the log is imported for"),
        LineFault.UnknownTrough unknown => FieldError.Of("trough", unknown.Given, "one of the site's troughs: " + string.Join(", ", unknown.Known)),
        LineFault.Twice twice => FieldError.Of("loaded_at", Rfc3339.Format(line.Cells!.LoadedAt), $"each batch once; line {twice.EarlierLine} has it too"),
        LineFault.NotWitheredHere not => FieldError.Of("trough", not.TroughId, $"a batch that was withered at {not.SiteId}; {not.BatchId} was not"),
        LineFault.KeptOtherwise { Difference: var difference, BatchId: var batch } => FieldError.Of(
            difference.Column, difference.Said,
            $"{(difference.Kept.Length > 0 ? difference.Kept : "nothing")}, as kept for batch {batch}; an import changes nothing"),
        LineFault.Impossible impossible => OutcomeRefusals.Error(impossible.Fault),
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault, "Nobody has said how this is told."),
    };
}
