using System.Diagnostics;
using System.Net.Sockets;
using System.Runtime.InteropServices;

namespace WitherAdvisor.Tests;

/// <summary>
/// One use of each kind that the pure library may not have. Never run: it stands here so that a test can show that
/// the check which finds nothing in the library does find these.
/// </summary>
internal static class ForbiddenUsesCanary
{
    public static readonly IReadOnlyList<string> MustBeFound =
    [
        "System.DateTime.get_Now",
        "System.DateTime.get_UtcNow",
        "System.DateTimeOffset.get_UtcNow",
        "System.TimeProvider.get_System",
        "System.Diagnostics.Stopwatch.StartNew",
        "System.Environment.get_MachineName",
        "System.Random..ctor",
        "System.Guid.NewGuid",
        "System.Console.Write",
        "System.IO.File.ReadAllText",
        "System.Net.Sockets.TcpClient..ctor",
        "System.Threading.Thread.Sleep",
        "System.Threading.Tasks.Task.Delay",
        "System.Threading.Tasks.Task`1.get_Result",
        "System.Reflection.Assembly.GetExecutingAssembly",
        "native method getpid",
    ];

#pragma warning disable RS0030, CA1303, CA1849, MA0129, CA5392, CA5393, SYSLIB1054, MA0045, MA0166, MA0132, MA0113
    public static double Trespass()
    {
        using TcpClient socket = new();
        using Task<double> task = new(() => 1);
        Thread.Sleep(0);
        Task.Delay(0).Wait();
        Console.Write(File.ReadAllText("nowhere") + Guid.NewGuid() + Environment.MachineName);
        Console.Write(System.Reflection.Assembly.GetExecutingAssembly().FullName + ProcessNumber());
        return DateTime.Now.Ticks + DateTime.UtcNow.Ticks + DateTimeOffset.UtcNow.Ticks + TimeProvider.System.GetTimestamp()
            + Stopwatch.StartNew().ElapsedTicks + new Random().NextDouble() + task.Result;
    }

    [DllImport("libc", EntryPoint = "getpid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int getpid();

    private static int ProcessNumber() => getpid();
#pragma warning restore
}
