#pragma warning disable SA1402, SA1403, MA0048, MA0182, CA1812, IDE0130, RCS1060 // Two namespaces in one file, so that the circle is seen whole.
namespace WitherAdvisor.Architecture.Tests.Canaries.Above
{
    internal static class Upper
    {
        /// <summary>The only way down, and it stands in a body.</summary>
        public static int Deep() => Below.Lower.Depth();
    }
}

namespace WitherAdvisor.Architecture.Tests.Canaries.Below
{
    internal static class Lower
    {
        /// <summary>The only way up, and it stands in a body of a lambda.</summary>
        public static int Depth() => Enumerable.Range(0, 3).Sum(depth => depth > 5 ? Above.Upper.Deep() : depth);
    }
}

namespace WitherAdvisor.Architecture.Tests.Canaries.Beside
{
    internal static class Outer
    {
        /// <summary>Uses the circle without being in it.</summary>
        public static int Deep() => Above.Upper.Deep();
    }
}
