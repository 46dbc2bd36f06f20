namespace WitherAdvisor.Bed;

/// <summary>What a bed is led through: its air leg by leg, when that ends, and what is kept of it on the way.</summary>
internal interface IBedCourse
{
    /// <summary>The leg that begins at an hour from loading; null where the course is over.</summary>
    AirLeg? LegFrom(double hour);

    /// <summary>Told after every step; false ends the course there.</summary>
    bool Stepped(LeafBed bed, double hour);

    /// <summary>Told where a leg is cut: at its end or at a turn before it, ahead of the turning.</summary>
    void Reached(LeafBed bed, double hour)
    {
    }

    /// <summary>Told after leaf is laid on.</summary>
    void Laid(LeafBed bed, double hour)
    {
    }

    /// <summary>Told after the bed is turned.</summary>
    void Turned(LeafBed bed, double hour)
    {
    }
}
