/**
 * What has to stay clear of what: combustible trim of the opening of a fireplace, as several rules say it beside each
 * other, and trim of doors, shades, sprinklers and walls. Nothing here gives leave to build: the local authority and the
 * appliance's label decide.
 */
@NullMarked
package buildup.engine.judge.clearance;

import org.jspecify.annotations.NullMarked;
