using System.Text;

namespace WitherAdvisor.Api.Pages.Curve;

/// <summary>A line on the drawing.</summary>
/// <param name="Name">"bottom": also its class in the style sheet.</param>
/// <param name="Label">What is written at its end.</param>
/// <param name="Points">Places on the drawing, in order.</param>
/// <param name="LabelY">Where its label stands, clear of the others.</param>
public sealed record CurveLine(string Name, string Label, IReadOnlyList<CurvePlace> Points, double LabelY)
{
    /// <summary>As the points attribute of a polyline holds it.</summary>
    public string PointList
    {
        get
        {
            StringBuilder list = new();
            foreach (CurvePlace place in Points)
            {
                list.Append(CurvePlace.Text(place.X)).Append(',').Append(CurvePlace.Text(place.Y)).Append(' ');
            }

            return list.ToString().TrimEnd();
        }
    }
}
