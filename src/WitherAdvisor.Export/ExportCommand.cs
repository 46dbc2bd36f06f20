using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using WitherAdvisor.Fields;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.LogFiles.Writing;
using WitherAdvisor.Loft.Exporting;
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

        List<FieldError> errors = [];
        return CheckedInput.Read<ExportQuery>(TextFields.ToJson((ObjectShape)Shapes.Of(typeof(ExportQuery)), options), errors) is { } query
            ? await Export(site, file, query, complaints)
            : await Refuse(complaints, errors.Select(error => error.Message));
    }

    private static async Task<int> Export(string site, string file, ExportQuery query, TextWriter complaints)
    {
        string database = DatabasePath.From(Configuration());
        if (!File.Exists(database))
        {
            return await Refuse(complaints, $"There is no database {database}; {DatabasePath.Key} tells where it is.");
        }

        await using ServiceProvider stores = new ServiceCollection().AddWitherStore(database).AddSingleton<LogExport>().BuildServiceProvider();
        if (await stores.GetRequiredService<LogExport>().Of(site, query.ToFilter(), CancellationToken.None) is not { } log)
        {
            return await Refuse(complaints, $"No site is called '{site}'.");
        }

        await WriteWhole(file, body => LogFileWriting.Write(log, query.Format, body, CancellationToken.None));
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
