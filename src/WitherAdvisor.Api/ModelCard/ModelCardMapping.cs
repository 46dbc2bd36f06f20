using WitherAdvisor.Api.Coefficients;
using WitherAdvisor.Api.ModelCard.Responses;
using WitherAdvisor.Coefficients;
using WitherAdvisor.Documentation;
using WitherAdvisor.Loft.Advising;
using WitherAdvisor.Words.Model;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>The model card as an answer.</summary>
internal static class ModelCardMapping
{
    public static ModelCardResponse Card { get; } = new()
    {
        ModelVersion = ModelVersion.Current,
        CoefficientSet = new WitherCoefficients().SetName,
        Equations = [.. ModelEquations.All.Select(Equation)],
        Coefficients = [.. CoefficientCatalogue.All.Select(Coefficient)],
        Spreads = [.. CoefficientSpread.All.Select(Spread)],
        Constants = [.. ModelConstants.All.Select(Constant)],
        Ranges = [.. DeclaredRange.All.Select(Range)],
        Unknowns = [.. Unknown.All.Select(unknown => new NotKnownResponse { Code = unknown.Code, Text = UnknownWording.Text(unknown.Code) })],
        Checks = [.. ModelCheck.All.Select(Check)],
        Reliability = Reliability(StatedReliability.Committed),
        Sensitivities = [.. CardBatch.All.Select(Batch)],
    };

    private static EquationResponse Equation(ModelEquation equation) => new()
    {
        Code = equation.Code,
        Topic = equation.Topic,
        Title = EquationWording.Title(equation.Code),
        Formula = EquationWording.Formula(equation),
        Source = equation.Source,
    };

    private static CardCoefficientResponse Coefficient(Coefficient one) => new()
    {
        Symbol = one.Symbol,
        Name = CoefficientField.All.FirstOrDefault(field => field.Coefficient == one)?.Field.Name,
        Unit = ShownNumber.Of(one.Default, one.Unit).Unit,
        Value = ShownNumber.Of(one.Default, one.Unit).Value,
        Least = ShownNumber.Of(one.Low, one.Unit).Value,
        Most = ShownNumber.Of(one.High, one.Unit).Value,
        Status = one.Status,
        Source = one.Source,
        Effect = CoefficientWording.Effect(one.Name),
    };

    private static SpreadResponse Spread(CoefficientSpread spread) => new()
    {
        Symbol = CoefficientCatalogue.All.FirstOrDefault(one => one.Name == spread.Of)?.Symbol,
        IsOfLogarithm = spread.IsOfLogarithm,
        Percent = ShownNumber.Of(spread.In(new()), "1").Value,
        Meaning = CoefficientWording.Spread(spread.Of),
    };

    private static ConstantResponse Constant(ModelConstant constant) => new()
    {
        Code = constant.Code,
        Topic = constant.Topic,
        Meaning = ConstantWording.Meaning(constant.Code),
        Value = ShownNumber.Of(constant.Value, constant.Unit).Value,
        Unit = ShownNumber.Of(constant.Value, constant.Unit).Unit,
        Status = constant.Status,
        Source = constant.Source,
    };

    private static RangeResponse Range(DeclaredRange range) => new()
    {
        Field = range.Field,
        Least = range.Least,
        Most = range.Most,
        Unit = range.Unit,
    };

    private static ModelCheckResponse Check(ModelCheck check) => new()
    {
        Code = check.Code,
        Text = ModelCheckWording.Text(check.Code),
        Where = check.Where,
    };

    private static ReliabilityResponse Reliability(StatedReliability stated) => new()
    {
        Batches = stated.Batches,
        HeldPercent = stated.HeldPercent,
        HeldIfFurtherPercent = stated.HeldIfFurtherPercent,
        Where = ModelCheck.All.Single(check => check.Code == "reliability").Where,
    };

    private static CardBatchResponse Batch(CardBatch batch) => new()
    {
        Batch = batch.Id,
        Title = batch.Title,
        Sensitivity = SensitivityMapping.ToResponse(batch.Sensitivity),
    };
}
