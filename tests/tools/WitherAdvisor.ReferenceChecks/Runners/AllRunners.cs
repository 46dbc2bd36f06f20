using WitherAdvisor.ReferenceChecks.Cases;
using WitherAdvisor.ReferenceChecks.Report;

namespace WitherAdvisor.ReferenceChecks.Runners;

/// <summary>Every runner, and the running of a file of cases.</summary>
public static class AllRunners
{
    private static readonly Dictionary<string, IRunner> ByName = new IRunner[]
    {
        new MoistAirRunner(), new AirStateRunner(), new HumidityTableRunner(), new FaoRunner(), new RootZoneRunner(),
        new OutturnRunner(), new BedCaseRunner(), new GrowingBedRunner(), new BedInstantRunner(), new HeldPlenumRunner(), new AdviceRunner(),
    }.ToDictionary(runner => runner.Name, StringComparer.Ordinal);

    public static bool Know(string name) => ByName.ContainsKey(name);

    public static Section Run(CaseFile file)
    {
        IRunner runner = ByName.TryGetValue(file.Runner, out IRunner? found)
            ? found
            : throw new InvalidDataException($"{file.Folder}/{file.Data} names a runner that there is not: {file.Runner}");
        return new(
            file.Title,
            $"`{file.Folder}/{file.Data}`. Source: {file.Source} Licence: {file.Licence}",
            [.. CaseReader.Read(file).Select(given => Row(runner, given))]);
    }

    private static CheckRow Row(IRunner runner, ReferenceCase given) =>
        new(given.Quantity, given.Label, given.Source, runner.Ours(given), given.Expected, given.Tolerance) { Printed = given.Printed };
}
