using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>
/// A recovery curve stated in clinical numbers: the level at an early and at a late week, how far people differ there, and how fast the way from the one
/// to the other is. Spreads are standard deviations of true values on the scale of the measure's error: in its unit, or of the natural logarithm.
/// </summary>
/// <param name="Early">The early week, often the first.</param>
/// <param name="Late">The late week, when most is done.</param>
/// <param name="Correlation">Correlation of the two levels between people, -1 to 1.</param>
/// <param name="Rates">How fast it may go, each with its weight; at least one.</param>
/// <param name="MisfitSpread">How far one person's course departs from the curve; 0 for not at all.</param>
/// <param name="MisfitWeeks">How long such a departure lasts: its correlation falls to 1/e over this time.</param>
public sealed record RecoveryCurve(
    RecoveryAnchor Early, RecoveryAnchor Late, double Correlation, ImmutableArray<RecoveryRate> Rates, double MisfitSpread, double MisfitWeeks);

/// <summary>One of the two weeks by which a recovery curve is stated.</summary>
/// <param name="Week">Weeks since the operation.</param>
/// <param name="Level">Mean in the measure's unit; on the logarithmic scale the median.</param>
/// <param name="Spread">Standard deviation between people, without measurement error.</param>
public sealed record RecoveryAnchor(double Week, double Level, double Spread);

/// <summary>One of the speeds of recovery reckoned with.</summary>
/// <param name="Weeks">Time in which the distance to the plateau falls to 1/e.</param>
/// <param name="Weight">How likely it is, against the others.</param>
public sealed record RecoveryRate(double Weeks, double Weight);
