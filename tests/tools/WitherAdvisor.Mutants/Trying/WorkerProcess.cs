using System.Diagnostics;

namespace WitherAdvisor.Mutants.Trying;

/// <summary>A worker, seen from the process that gives it work.</summary>
internal sealed class WorkerProcess : IDisposable
{
    private readonly Process process;

    /// <param name="command">What it is to do: see <see cref="Worker"/>.</param>
    public WorkerProcess(string command) => process = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, [command])
    {
        UseShellExecute = false,
        RedirectStandardInput = true,
        RedirectStandardOutput = true,
    })!;

    /// <summary>All that it says.</summary>
    public static IEnumerable<string> Lines(string command)
    {
        using WorkerProcess worker = new(command);
        while (worker.process.StandardOutput.ReadLine() is { } line)
        {
            yield return line;
        }

        worker.process.WaitForExit();
        if (worker.process.ExitCode != 0)
        {
            throw new InvalidOperationException($"A worker asked to {command} ended with {worker.process.ExitCode}.");
        }
    }

    /// <summary>Its answer to a line; null when it went down with it.</summary>
    public string? Ask(string line)
    {
        try
        {
            process.StandardInput.WriteLine(line);
        }
        catch (IOException)
        {
            return null;
        }

        return process.StandardOutput.ReadLine();
    }

    public void Dispose()
    {
        process.Kill();
        process.Dispose();
    }
}
