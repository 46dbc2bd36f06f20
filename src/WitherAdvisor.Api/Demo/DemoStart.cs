using WitherAdvisor.Loft.Intake;

namespace WitherAdvisor.Api.Demo;

/// <summary>What the first start shows: the invented estate, a recommendation in the terminal, the address of its page.</summary>
internal static class DemoStart
{
    /// <summary>Set to false to start a new database empty.</summary>
    public const string Key = "Demo:OnNewDatabase";

    public static async Task ShowInventedEstateOnNewDatabase(this WebApplication app)
    {
        if (!app.Configuration.GetValue(Key, true))
        {
            return;
        }

        IReadOnlyList<IntakeResult.Taken> taken;
        await using (AsyncServiceScope scope = app.Services.CreateAsyncScope())
        {
            taken = await scope.ServiceProvider.GetRequiredService<InventedEstate>().LoadIntoNewDatabase(CancellationToken.None);
        }

        app.Lifetime.ApplicationStarted.Register(() => Show(app.Urls.First(), taken));
    }

    private static void Show(string address, IReadOnlyList<IntakeResult.Taken> taken)
    {
        foreach (IntakeResult.Taken batch in taken)
        {
            Console.WriteLine(DemoCard.Of(batch, address));
        }

        Console.WriteLine($"Pages: {address}/  REST interface: {address}/swagger");
    }
}
