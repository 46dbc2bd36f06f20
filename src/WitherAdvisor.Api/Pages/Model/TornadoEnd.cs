namespace WitherAdvisor.Api.Pages.Model;

/// <summary>An end of a bar.</summary>
/// <param name="X">Where it lies.</param>
/// <param name="Text">What is written beside it.</param>
public sealed record TornadoEnd(double X, string Text)
{
    public bool IsLeft => X < TornadoFrame.Middle;

    /// <summary>Left side of what lies between the end and the line of the plan.</summary>
    public double From => Math.Min(X, TornadoFrame.Middle);

    public double Width => Math.Abs(X - TornadoFrame.Middle);

    public double LabelX => X + (IsLeft ? -TornadoFrame.LabelGap : TornadoFrame.LabelGap);
}
