using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Outcomes;
using WitherAdvisor.Sites;

namespace WitherAdvisor.LongLog;

/// <summary>An invented site whose log is as long as is wanted. Numbers are of the right size and mean nothing.</summary>
internal static class InventedLog
{
    public const string Site = "long-log";

    private const int RowsInTransaction = 20_000;
    private const int Seed = 7;

    private static readonly DateTimeOffset First = new(2001, 1, 1, 11, 0, 0, TimeSpan.Zero);

    public static async Task Make(IServiceProvider services, int rows)
    {
        ISiteStore sites = services.GetRequiredService<ISiteStore>();
        await sites.PutSite(new(Site, "Long Log (invented)", "Asia/Colombo", new Site(1500, 7, 80.7, WitherAdvisor.Sites.Site.UsualHotAirC, WitherStyle.Short)));
        await sites.PutTrough(new(Site, "trough-1", "Trough 1", new Trough(42)));
        IOutcomeStore outcomes = services.GetRequiredService<IOutcomeStore>();
        Random chance = new(Seed);
        foreach (int[] part in Enumerable.Range(0, rows).Chunk(RowsInTransaction))
        {
            await outcomes.Import(Site, import => part.All(number => Add(import, number, chance)));
            Console.Write($"\r{part[^1] + 1:N0} outcomes");
        }

        Console.WriteLine();
    }

    private static bool Add(IOutcomeImport import, int number, Random chance)
    {
        StoredBatch batch = Batch(number, chance);
        import.Add(batch);
        import.Add(new StoredOutcome(batch.Id, Outcome(batch, chance), batch.CreatedAt, "night maker", []));
        import.Add(Figures(batch, chance));
        return true;
    }

    private static StoredBatch Batch(int number, Random chance)
    {
        DateTimeOffset loaded = First.AddMinutes(number * 10);
        LeafLabel label = new("Upper division", $"Field {number % 40}", number % 3 == 0 ? null : "Clone A (invented)", BushAge.Mature, LeafStandard.Fine);
        Batch leaf = new(label, loaded.AddHours(-6), loaded.AddHours(-1), loaded, 900 + 400 * chance.NextDouble(), 0.2 * chance.NextDouble());
        return new(Guid.CreateVersion7(loaded).ToString(), Site, "trough-1", leaf, loaded, loaded.AddHours(8 + 6 * chance.NextDouble()), BatchEnd.Unloaded);
    }

    private static WitherOutcome Outcome(StoredBatch batch, Random chance) => new()
    {
        AirSet = [new(0, 26.5, null, 7.2, 1)],
        AirMeasured = [.. Enumerable.Range(0, 4).Select(part => new AirHeld(2 * part, 25 + chance.NextDouble(), 18 + chance.NextDouble(), null, null))],
        TurnedAtHours = [2, 4, 6],
        Turns = 3,
        WitheredWeightKg = batch.Batch.GreenWeightKg * (0.45 + 0.1 * chance.NextDouble()),
        OvenMoistureWetBasis = 0.58 + 0.05 * chance.NextDouble(),
        SampleWeighings = [new(4, 0.7 + 0.1 * chance.NextDouble())],
        Verdict = (WitherVerdict)chance.Next(3),
        Evenness = EvennessVerdict.Even,
        Faults = chance.Next(5) == 0 ? ["red leaf on top"] : [],
        Weather = "wet",
        Note = chance.Next(3) == 0 ? "Fan off for ten minutes at two, the power failed." : null,
    };

    private static AdviceFigures Figures(StoredBatch batch, Random chance) => new(
        batch.Id, batch.CreatedAt, batch.Id, "0.1.0", "defaults-1", "wet",
        40 * chance.NextDouble(), 90, 1, 0.9, 0.2 * chance.NextDouble(), 0.03, 78 + chance.NextDouble(), 0.9,
        10 + chance.NextDouble(), 26.5, 7.2, 2, 9, 10.5, 12.5, 47.5);
}
