namespace Gradus.Domain;

/// <summary>How numbers of ranges are said: never finer than they were read, and an error never smaller than it is.</summary>
public static class RangeRounding
{
    /// <summary>Up to what a reading has, a tenth: a difference that is printed below it is below it.</summary>
    public static decimal Error(decimal margin) => Math.Ceiling(margin * 10) / 10;

    /// <summary>The low end of what may be true, outwards to whole degrees or millimetres.</summary>
    public static decimal Low(decimal value, MotionUnit unit) =>
        unit == MotionUnit.Centimetres ? Math.Floor(value * 10) / 10 : Math.Floor(value);

    /// <summary>The high end of it, likewise.</summary>
    public static decimal High(decimal value, MotionUnit unit) =>
        unit == MotionUnit.Centimetres ? Math.Ceiling(value * 10) / 10 : Math.Ceiling(value);
}
