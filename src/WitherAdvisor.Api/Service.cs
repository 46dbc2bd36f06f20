using WitherAdvisor.Api.Demo;

namespace WitherAdvisor.Api;

/// <summary>The service from start to stop.</summary>
internal static class Service
{
    public static async Task<int> Run(string[] args)
    {
        var builder = WebApplication.CreateBuilder(args);
        builder.AddWitherAdvisor();
        var app = builder.Build();
        app.UseWitherAdvisor();
        await app.ShowInventedEstateOnNewDatabase();
        await app.RunAsync();
        return 0;
    }
}
