package buildup.catalog.fastener;

import buildup.shared.length.Angle;
import buildup.shared.length.Length;

/**
 * The outline of a driving tool in the section: a nose on the head of the fastener and a body behind it in the line of
 * drive. Magazine and handle lie along the run and are left out.
 *
 * @param about one line for a list
 * @param noseLength from the head to the body
 * @param noseWidth of the nose, which comes to a point at 45 degrees
 * @param lean of the body off the line of drive, to whichever side is free
 * @param ahead whether the fastener stands out in front of the nose before it is driven
 */
public record Tool(
        String name,
        String about,
        Length noseLength,
        Length noseWidth,
        Length bodyWidth,
        Length bodyLength,
        Angle lean,
        boolean ahead) {}
