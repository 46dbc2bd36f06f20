namespace WitherAdvisor.Api.Pages.Model;

/// <summary>A row of the picture: a title and, from the line of the plan, what its two ends do.</summary>
/// <param name="Top">y of the row.</param>
/// <param name="Title">The input.</param>
/// <param name="Moved">From what to what.</param>
/// <param name="Low">With the input moved down; null where it does nothing that can be seen.</param>
/// <param name="High">With the input moved up; null likewise.</param>
public sealed record TornadoRow(double Top, string Title, string Moved, TornadoEnd? Low, TornadoEnd? High)
{
    /// <summary>Neither end does anything that can be seen.</summary>
    public bool IsNothing => Low is null && High is null;
}
