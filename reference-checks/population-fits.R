# Recomputes population-fits.json: Rscript population-fits.R > population-fits.json
# Needs R with mvtnorm and nlme; the tests need only the JSON file. The sample is invented.
suppressPackageStartupMessages({ library(mvtnorm); library(nlme) })

text <- function(x) {
  if (is.list(x)) {
    if (is.null(names(x))) return(paste0("[", paste(sapply(x, text), collapse = ", "), "]"))
    return(paste0("{", paste0("\"", names(x), "\": ", sapply(x, text), collapse = ", "), "}"))
  }
  if (is.matrix(x)) return(text(lapply(seq_len(nrow(x)), function(i) x[i, ])))
  one <- function(v) if (is.character(v) || !is.finite(v)) paste0("\"", v, "\"") else format(v, digits = 15)
  if (length(x) == 1 && is.null(attr(x, "list"))) return(one(x))
  paste0("[", paste(sapply(x, one), collapse = ", "), "]")
}
many <- function(x) structure(x, list = TRUE)

girths <- c(702, 715, 731, 738, 744, 751, 757, 760, 766, 769, 775, 778, 781, 786, 790, 793, 797, 801, 804, 808,
            812, 815, 819, 822, 826, 831, 835, 840, 844, 849, 855, 861, 866, 872, 880, 887, 895, 904, 912, 923,
            934, 947, 961, 978, 996, 1021, 1048, 1090)
weights <- rep(c(1, 2, 1, 3, 0.5, 1.5), 8)

# Maximum likelihood, from several starts, by BFGS after Nelder and Mead, to the last digits.
best <- function(nll, starts, parscale) {
  fits <- lapply(starts, function(s) {
    o <- optim(s, nll, control = list(maxit = 20000, reltol = 1e-15, parscale = parscale))
    for (i in 1:5) o <- optim(o$par, nll, control = list(maxit = 20000, reltol = 1e-16, parscale = parscale))
    optim(o$par, nll, method = "BFGS", control = list(maxit = 2000, reltol = 1e-16, parscale = parscale,
                                                      ndeps = rep(1e-5, length(s))))
  })
  fits[[which.min(sapply(fits, function(f) f$value))]]
}
described <- function(o, nll, parscale) {
  h <- optimHess(o$par, nll, control = list(parscale = parscale, ndeps = rep(1e-4, length(o$par))))
  list(parameters = o$par, standardErrors = sqrt(diag(solve(h))), logLikelihood = -o$value)
}
dsn <- function(x, xi, omega, alpha) {
  z <- (x - xi) / omega
  log(2) - log(omega) + dnorm(z, log = TRUE) + pnorm(alpha * z, log.p = TRUE)
}
fitAll <- function(x, w) {
  w <- w / sum(w) * sum(w)^2 / sum(w^2)
  normal <- function(p) if (p[2] <= 0) 1e10 else -sum(w * dnorm(x, p[1], p[2], log = TRUE))
  lognormal <- function(p) if (p[2] <= 0) 1e10 else -sum(w * dlnorm(x, p[1], p[2], log = TRUE))
  skewed <- function(p) if (p[2] <= 0) 1e10 else -sum(w * dsn(x, p[1], p[2], p[3]))
  mixed <- function(p) {
    if (p[1] <= 0 || p[1] >= 1 || min(p[3], p[5]) <= 4.5) return(1e10)
    -sum(w * log(p[1] * dnorm(x, p[2], p[3]) + (1 - p[1]) * dnorm(x, p[4], p[5])))
  }
  list(
    normal = described(best(normal, list(c(840, 90)), c(100, 100)), normal, c(100, 100)),
    lognormal = described(best(lognormal, list(c(6.7, .1)), c(.1, .1)), lognormal, c(.1, .1)),
    "skew-normal" = described(best(skewed, list(c(730, 130, 3), c(760, 120, 1)), c(50, 50, 1)), skewed, c(50, 50, 1)),
    mixture = described(best(mixed, list(c(.8, 800, 50, 950, 60), c(.7, 790, 50, 930, 80), c(.9, 820, 70, 1000, 50)),
                             c(.1, 50, 50, 50, 50)), mixed, c(.1, 50, 50, 50, 50)))
}

z <- sort((girths - mean(girths)) / sd(girths)); n <- length(z); i <- 1:n
ad <- -n - mean((2 * i - 1) * (pnorm(z, log.p = TRUE) + pnorm(rev(z), lower.tail = FALSE, log.p = TRUE)))
l <- log(girths); zl <- sort((l - mean(l)) / sd(l))
adl <- -n - mean((2 * i - 1) * (pnorm(zl, log.p = TRUE) + pnorm(rev(zl), lower.tail = FALSE, log.p = TRUE)))

# Boxes: three variables by TVPACK (error below 1e-14), corner by corner.
cube <- function(lower, upper, R) {
  sum <- 0
  for (a in 0:1) for (b in 0:1) for (c in 0:1) {
    q <- ifelse(c(a, b, c) == 1, lower, upper)
    if (any(q == -Inf)) next
    sum <- sum + (-1)^(a + b + c) * if (all(q == Inf)) 1 else
      pmvnorm(upper = q, corr = R, algorithm = TVPACK(1e-15))[1]
  }
  sum
}
matrixOf <- function(r, d) { m <- diag(d); m[upper.tri(m)] <- r; m[lower.tri(m)] <- t(m)[lower.tri(m)]; m }
threes <- list(
  list(c(-1, -1, -1), c(1, 1, 1), matrixOf(c(.5, .3, .2), 3)),
  list(c(-Inf, -0.5, 0), c(0.5, 1.5, Inf), matrixOf(c(.9, -.4, -.2), 3)),
  list(c(-2, -1, -1.5), c(0, 0.25, 2.5), matrixOf(c(.98, .9, .95), 3)),
  list(c(1, 1, 1), c(3, 2.5, 4), matrixOf(c(.6, .5, .4), 3)),
  list(c(-0.2, -3, -1), c(0.1, 3, 0.2), matrixOf(c(-.7, .2, .5), 3)))
# Four: Genz and Bretz with many points; their error estimate is carried along.
set.seed(20260101)
R4 <- matrixOf(c(.6, .5, .3, .7, .4, .8), 4)
boxes <- list(
  list(rep(-1, 4), c(1, 0.5, 1.5, 1), R4),
  list(c(-Inf, -Inf, 0, -1), c(0.5, 1, Inf, Inf), R4))
fours <- lapply(boxes, function(b) {
  p <- pmvnorm(b[[1]], b[[2]], corr = b[[3]], algorithm = GenzBretz(maxpts = 2e7, abseps = 2e-8, releps = 0))
  list(lower = b[[1]], upper = b[[2]], correlation = b[[3]], p = p[1], error = attr(p, "error"))
})

# Variance components.
balanced <- list(c(400, 404, 401), c(420, 416, 421), c(440, 440, 437), c(398, 395, 402), c(431, 427, 433))
unbalanced <- list(c(400, 404), c(420, 416, 421), c(440), c(398, 395, 402, 399), c(431, 427), c(412))
frame <- function(g) data.frame(y = unlist(g), id = factor(rep(seq_along(g), sapply(g, length))))
a <- summary(aov(y ~ id, frame(balanced)))[[1]]
msb <- a[1, 3]; msw <- a[2, 3]
m <- lme(y ~ 1, random = ~ 1 | id, data = frame(unbalanced), method = "ML",
         control = lmeControl(tolerance = 1e-12, msTol = 1e-12, niterEM = 200))
vc <- c(sqrt(as.numeric(getVarCov(m))), m$sigma)

cat(text(list(
  origin = paste("recomputed with R", getRversion(), "mvtnorm", packageVersion("mvtnorm"), "nlme", packageVersion("nlme")),
  girths = many(girths), weights = many(weights),
  fits = fitAll(girths, rep(1, n)),
  weighted = fitAll(girths, weights),
  andersonDarling = list(normal = ad, lognormal = adl),
  boxOfThree = lapply(threes, function(b) list(lower = b[[1]], upper = b[[2]], correlation = b[[3]], p = cube(b[[1]], b[[2]], b[[3]]))),
  boxOfFour = fours,
  balanced = list(people = balanced, meanSquareBetween = msb, meanSquareWithin = msw),
  unbalanced = list(people = lapply(unbalanced, many), mean = as.numeric(fixef(m)), betweenSd = vc[1], withinSd = vc[2],
                    logLikelihood = as.numeric(logLik(m))))), "\n", sep = "")
