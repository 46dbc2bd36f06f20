using WitherAdvisor.Advice;

namespace WitherAdvisor.Loft.Records.Format2;

/// <summary>An outcome as it is kept: one of the two.</summary>
internal sealed record KeptOutcome(AdviceOutcome.Advised? Advised, AdviceOutcome.CannotAdvise? CannotAdvise)
{
    public static KeptOutcome Of(AdviceOutcome outcome) =>
        new(outcome as AdviceOutcome.Advised, outcome as AdviceOutcome.CannotAdvise);

    public AdviceOutcome ToOutcome() =>
        (AdviceOutcome?)Advised ?? CannotAdvise ?? throw new InvalidDataException("Neither advised nor refused.");
}
