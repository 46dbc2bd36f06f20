using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Api.Hosting;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Outcomes.Export;
using WitherAdvisor.Api.Outcomes.Log;
using WitherAdvisor.Fields;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Kept.Outcomes;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Store.Sqlite;

namespace WitherAdvisor.Export;

/// <summary>
/// Writes the log of a site to a file from the command line, as the service sends it. A process that only exports needs
/// less memory than a service, which may go on beside it.
/// </summary>
internal static class ExportCommand
{
    private const string Usage =
        "--site <site> --format csv|parquet --file <path> [--from <time>] [--to <time>] [--spell <spell>] [--cultivar <name>]";

    private const int Done = 0;
    private const int Refused = 2;

    /// <summary>Exit code: 0, or 2 where nothing was written, after saying why.</summary>
    public static async Task<int> Run(IReadOnlyList<string> words, TextWriter complaints)
    {
        if (Options(words) is not { } options || !options.Remove("site", out string? site) || !options.Remove("file", out string? file))
        {
            return await Refuse(complaints, "Usage: " + Usage);
        }

        Refusable<ExportQuery> query = InputReader.Read<ExportQuery>(TextFields.ToJson((ObjectShape)Shapes.Of(typeof(ExportQuery)), options));
        return query.Refusal is { } refusal
            ? await Refuse(complaints, refusal.Problem.Errors?.Select(error => error.Message) ?? [refusal.Problem.Title])
            : await Export(site, file, query.Value, complaints);
    }

    private static async Task<int> Export(string site, string file, ExportQuery query, TextWriter complaints)
    {
        string database = DatabasePath.From(Configuration());
        if (!File.Exists(database))
        {
            return await Refuse(complaints, $"There is no database {database}; {DatabasePath.Key} tells where it is.");
        }

        await using ServiceProvider stores = new ServiceCollection().AddWitherStore(database).BuildServiceProvider();
        if (await stores.GetRequiredService<ISiteStore>().FindSite(site) is not { } found)
        {
            return await Refuse(complaints, $"No site is called '{site}'.");
        }

        IAsyncEnumerable<LogRow> rows = LogExport.Rows(found, stores.GetRequiredService<IOutcomeStore>(), query, CancellationToken.None);
        await WriteWhole(file, body => LogExport.Write(rows, query.Format, body, CancellationToken.None));
        return Done;
    }

    /// <summary>The file has its name only once it is whole.</summary>
    private static async Task WriteWhole(string file, Func<Stream, Task> write)
    {
        string part = file + ".part";
        await using (FileStream body = File.Create(part))
        {
            await write(body);
        }

        File.Move(part, file, overwrite: true);
    }

    /// <summary>Null unless each is a name behind two dashes with a value, and none comes twice.</summary>
    private static Dictionary<string, string>? Options(IReadOnlyList<string> words)
    {
        Dictionary<string, string> options = [];
        foreach (string[] pair in words.Chunk(2))
        {
            if (pair is not [['-', '-', .. var name], var value] || !options.TryAdd(name, value))
            {
                return null;
            }
        }

        return options;
    }

    /// <summary>As the service reads it.</summary>
    private static IConfigurationRoot Configuration() =>
        new ConfigurationBuilder().AddJsonFile(Path.GetFullPath("appsettings.json"), optional: true).AddEnvironmentVariables().Build();

    private static async Task<int> Refuse(TextWriter complaints, params IEnumerable<string> lines)
    {
        foreach (string line in lines)
        {
            await complaints.WriteLineAsync(line);
        }

        return Refused;
    }
}
