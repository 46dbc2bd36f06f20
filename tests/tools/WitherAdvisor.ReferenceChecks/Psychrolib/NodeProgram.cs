using System.Diagnostics;

namespace WitherAdvisor.ReferenceChecks.Psychrolib;

/// <summary>Programs of Node.js in the folder beside this file.</summary>
internal static class NodeProgram
{
    /// <summary>What a program of that folder prints, line by line; its packages are installed from the lock file first.</summary>
    public static string[] Lines(string folder, string script)
    {
        if (!Directory.Exists(Path.Combine(folder, "node_modules")))
        {
            Run(folder, "npm", ["ci"]);
        }

        return Run(folder, "node", [script]).Split('\n', StringSplitOptions.RemoveEmptyEntries);
    }

    private static string Run(string folder, string program, string[] arguments)
    {
        using Process process = Started(new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            UseShellExecute = false,
        });
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0
            ? output
            : throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}");
    }

    private static Process Started(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start) ?? throw new InvalidOperationException($"{start.FileName} did not start");
        }
        catch (System.ComponentModel.Win32Exception missing)
        {
            throw new InvalidOperationException($"{start.FileName} is not installed; tests/run installs it on Debian", missing);
        }
    }
}
